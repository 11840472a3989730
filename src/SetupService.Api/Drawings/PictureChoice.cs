using System.Reflection;
using SetupService.Api.Http;

namespace SetupService.Api.Drawings;

/// <summary>Whether a caller of a call that answers in JSON or as a picture wants the picture, by <c>Accept</c>.</summary>
public sealed class PictureChoice : IBindableFromHttpContext<PictureChoice>
{
    private PictureChoice(bool isWanted) => IsWanted = isWanted;

    /// <summary>True where the caller prefers SVG to JSON; a caller to whom both are alike gets JSON.</summary>
    public bool IsWanted { get; }

    /// <inheritdoc />
    public static ValueTask<PictureChoice?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        ArgumentNullException.ThrowIfNull(context);
        return ValueTask.FromResult<PictureChoice?>(new PictureChoice(AcceptCheck.Prefers(context, SvgAnswer.MediaType, ProducedMedia.Json.Type)));
    }
}
