using SetupService.Api.Http.Pages;

namespace SetupService.Api.Drawings;

/// <summary>How every page of the service looks on screen and on paper, in the inks of its drawings; each kind of page adds what it alone has.</summary>
/// <param name="Sheet">The whole style sheet.</param>
/// <param name="Policy">The policy of the page: its own style sheet and the drawings'.</param>
internal sealed record PageStyle(string Sheet, string Policy)
{
    /// <summary>What all pages have. Has none of the characters that XML would escape.</summary>
    private const string Rules =
        """

        :root{color-scheme:light dark}
        body{margin:0;background:var(--paper);color:var(--ink);font:15px/1.45 system-ui,sans-serif}
        main{max-width:920px;margin:0 auto;padding:28px 24px 40px}
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
        .changes th:first-child{width:34%}
        .beside{display:grid;grid-template-columns:minmax(0,1fr) 400px;gap:0 32px;align-items:start}
        figure{margin:0;break-inside:avoid}
        figure svg{display:block;width:100%;height:auto}
        ul{margin:0;padding-left:22px} li{margin:0 0 6px;break-inside:avoid}
        footer{margin-top:26px;font-size:13px;color:var(--soft)}
        @media screen and (max-width:820px){.beside{display:block} figure{max-width:560px;margin:24px auto 0}}
        @media screen and (max-width:560px){main{padding:18px 14px} .checks th:nth-child(3),.checks th:nth-child(4),.checks .size{display:none}}
        @page{margin:14mm 13mm}
        @media print{body.drawing,.drawing .drawing{--paper:#fff} body{font-size:9.5pt;line-height:1.35} main{max-width:none;padding:0} .beside{grid-template-columns:minmax(0,1fr) 88mm;gap:0 8mm} h1{font-size:18pt} h2{font-size:11.5pt;margin:13pt 0 3pt} .verdict{font-size:14pt;margin:10pt 0 4pt} .summary{font-size:11pt;max-width:none} th,td{padding:3pt 8pt 3pt 0} thead th,footer{font-size:8.5pt}}

        """;

    /// <summary>The style of a kind of page.</summary>
    /// <param name="own">What it alone has; none of the characters that XML would escape.</param>
    public static PageStyle With(string own)
    {
        var sheet = Palette.StyleSheet + Rules + own;
        return new(sheet, PagePolicy.ForStyles(sheet, Palette.StyleSheet));
    }
}
