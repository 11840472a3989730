using SetupService.Api.Drawings;
using SetupService.Api.Http.Pages;

namespace SetupService.Api.Fitment.Report;

/// <summary>How the report looks on screen and on paper.</summary>
internal static class ReportStyle
{
    /// <summary>The page's style sheet: the inks of the drawings, and what they are used for here. Has none of the characters that XML would escape.</summary>
    public const string Rules =
        """

        :root{color-scheme:light dark}
        body{margin:0;background:var(--paper);color:var(--ink);font:15px/1.45 system-ui,sans-serif}
        main{max-width:920px;margin:0 auto;padding:28px 24px 40px}
        .lead{display:grid;grid-template-columns:minmax(0,1fr) 400px;gap:0 32px}
        h1{font-size:26px;line-height:1.2;margin:0}
        h2{font-size:17px;margin:30px 0 8px;break-after:avoid}
        p{margin:0 0 8px}
        .soft{color:var(--soft)}
        .verdict{font-size:20px;font-weight:600;margin:18px 0 6px;padding-left:12px;border-left:6px solid}
        .pass{color:var(--pass)} .caution{color:var(--caution)} .fail{color:var(--fail)} .unknown{color:var(--ink)}
        .summary{font-size:17px;max-width:64ch}
        table{border-collapse:collapse;width:100%}
        th,td{text-align:left;vertical-align:top;padding:6px 10px 6px 0;border-bottom:1px solid var(--soft)}
        thead th{font-size:13px;font-weight:400;color:var(--soft);border-bottom-width:2px}
        tbody th{font-weight:600}
        tr{break-inside:avoid}
        .checks th:first-child{width:19%} .checks th:nth-child(2){width:11%} .checks th:nth-child(3),.checks th:nth-child(4){width:11%} .result{font-weight:600}
        .changes th:first-child{width:34%} .fittings th:first-child{width:26%}
        figure{margin:0;break-inside:avoid}
        figure svg{display:block;width:100%;height:auto}
        ul{margin:0;padding-left:22px} li{margin:0 0 6px;break-inside:avoid}
        .tick{list-style:none;padding:0} .tick li{padding-left:28px;position:relative}
        .tick li::before{content:'';position:absolute;left:0;top:3px;width:13px;height:13px;border:1.5px solid var(--ink)}
        .sign{display:flex;gap:32px;margin-top:34px;break-inside:avoid} .sign div{flex:1;border-top:1px solid var(--ink);padding-top:4px;font-size:13px}
        footer{margin-top:26px;font-size:13px;color:var(--soft)}
        @media screen and (max-width:820px){.lead{display:block} figure{max-width:560px;margin:24px auto 0}}
        @media screen and (max-width:560px){main{padding:18px 14px} .checks th:nth-child(3),.checks th:nth-child(4),.checks .size{display:none} .sign{gap:14px}}
        @page{margin:14mm 13mm}
        @media print{body.drawing,.drawing .drawing{--paper:#fff} body{font-size:9.5pt;line-height:1.35} main{max-width:none;padding:0} .lead{grid-template-columns:minmax(0,1fr) 88mm;gap:0 8mm} h1{font-size:18pt} h2{font-size:11.5pt;margin:13pt 0 3pt} .verdict{font-size:14pt;margin:10pt 0 4pt} .summary{font-size:11pt;max-width:none} th,td{padding:3pt 8pt 3pt 0} thead th,footer,.sign div{font-size:8.5pt} .lead .tick{font-size:9pt} .tick li{margin-bottom:4pt} .workshop{break-before:page;font-size:8.8pt} .workshop h2:first-child{margin-top:0}}

        """;

    /// <summary>The whole style sheet of the page.</summary>
    public static string Sheet { get; } = Palette.StyleSheet + Rules;

    /// <summary>The policy of the page: its own style sheet and the drawing's.</summary>
    public static string Policy { get; } = PagePolicy.ForStyles(Sheet, Palette.StyleSheet);
}
