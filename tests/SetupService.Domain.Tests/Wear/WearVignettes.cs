using SetupService.Domain.Tests.Wear.Vignettes;

namespace SetupService.Domain.Tests.Wear;

/// <summary>Cases as people report them, each with the cause that guidance names first and where that stands.</summary>
internal static class WearVignettes
{
    public static IReadOnlyList<WearVignette> All { get; } =
    [
        .. CamberVignettes.All,
        .. ToeVignettes.All,
        .. PressureVignettes.All,
        .. RoundTyreVignettes.All,
        .. DrivingVignettes.All,
        .. SideVignettes.All,
        .. NormalVignettes.All,
    ];
}
