using FluentValidation;
using SetupService.Api.Http.Rules;
using SetupService.Domain.Tyres;

namespace SetupService.Api.Tyres;

/// <summary>What a tyre must keep beyond types and ranges: its marking can be read.</summary>
public sealed class TyreDocumentRules : AbstractValidator<TyreDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public TyreDocumentRules() => RuleFor(tyre => tyre.Marking).Readable(TyreMarkingReader.Read);
}
