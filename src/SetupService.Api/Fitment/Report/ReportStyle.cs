using SetupService.Api.Drawings;

namespace SetupService.Api.Fitment.Report;

/// <summary>What the fit report adds to the style of every page: verdict and drawing side by side, boxes to tick, lines to sign.</summary>
internal static class ReportStyle
{
    /// <summary>The page's style.</summary>
    public static PageStyle Page { get; } = PageStyle.With(
        """
        .fittings th:first-child{width:26%}
        .tick{list-style:none;padding:0} .tick li{padding-left:28px;position:relative}
        .tick li::before{content:'';position:absolute;left:0;top:3px;width:13px;height:13px;border:1.5px solid var(--ink)}
        .sign{display:flex;gap:32px;margin-top:34px;break-inside:avoid} .sign div{flex:1;border-top:1px solid var(--ink);padding-top:4px;font-size:13px}
        @media screen and (max-width:560px){.sign{gap:14px}}
        @media print{.sign div{font-size:8.5pt} .beside .tick{font-size:9pt} .tick li{margin-bottom:4pt} .workshop{break-before:page;font-size:8.8pt} .workshop h2:first-child{margin-top:0}}

        """);
}
