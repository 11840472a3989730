using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Domain.Answers;

namespace SetupService.Api.Http.Rules;

/// <summary>The rule for texts people type: the domain's own reader must be able to read them.</summary>
public static class ReadableRule
{
    /// <summary>A text given must be readable; the fault is the reader's, in its words. A missing text is not this rule's business.</summary>
    /// <typeparam name="T">The document.</typeparam>
    /// <typeparam name="TRead">What the text stands for.</typeparam>
    public static void Readable<T, TRead>(this IRuleBuilder<T, string?> rule, Func<string, ParseResult<TRead>> read)
        where TRead : class
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(read);
        rule.Custom((text, context) =>
        {
            if (text is not null && read(text).Fault is { } fault)
                context.AddFailure(new ValidationFailure(context.PropertyPath, fault.Message) { ErrorCode = FaultCodes.Unreadable });
        });
    }
}
