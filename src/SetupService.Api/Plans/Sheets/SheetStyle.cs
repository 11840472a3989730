using SetupService.Api.Drawings;

namespace SetupService.Api.Plans.Sheets;

/// <summary>What the workshop's sheets add to the style of every page: a sheet a page, boxes to fill in, steps to tick.</summary>
internal static class SheetStyle
{
    /// <summary>The page's style.</summary>
    public static PageStyle Page { get; } = PageStyle.With(
        """
        .sheet{margin-top:44px} .sheet:first-child{margin-top:0}
        .sheet h1{border-bottom:3px solid var(--ink);padding-bottom:6px;display:flex;justify-content:space-between;align-items:baseline;gap:16px} .sheet h1 span{font-size:14px;font-weight:400;color:var(--soft);text-align:right}
        .who{display:grid;grid-template-columns:repeat(5,1fr);gap:10px;margin:14px 0} .who div,.box{border:1.5px solid var(--soft);border-radius:3px} .who div{font-size:12px;color:var(--soft);padding:3px 6px;min-height:40px}
        .job{font-size:18px;font-weight:600;line-height:1.4;margin:16px 0 0;padding-left:12px;border-left:6px solid}
        .danger{border:2px solid var(--fail);border-radius:4px;padding:10px 14px 4px;margin:18px 0 0;} .danger h2{margin:0 0 6px;color:var(--fail)} .danger ul{columns:2;column-gap:28px;font-size:13.5px} .later{border-color:var(--caution)} .later h2{color:var(--caution)}
        .stage th{font-size:14px;padding-top:14px;border-bottom:2px solid;text-transform:none}
        .steps td:first-child{width:30px;color:var(--soft);white-space:nowrap} .steps td:nth-child(2){width:24px} .steps td:nth-child(4){width:27%} .steps .care{color:var(--fail);font-weight:600}
        .tickbox{display:inline-block;width:15px;height:15px;border:1.5px solid var(--ink);border-radius:2px;vertical-align:-3px}
        .fill td.box,.fill th.box{min-width:44px;height:30px;border:1.5px solid var(--soft)} .fill td,.fill th{vertical-align:middle} .fill td.box+td:not(.box){padding-left:10px} .fill td.goal{font-weight:700;font-size:17px;white-space:nowrap} .angles{table-layout:fixed} .angles thead th{width:8.5%} .angles thead th:first-child{width:15%} .angles thead th:nth-child(2),.angles thead th:nth-child(5){width:20%} .angles thead th:nth-child(6){width:11%} .fill.angles td.goal{white-space:normal} .angles td.goal+td{white-space:nowrap} .parts thead th:first-child{overflow-wrap:normal}
        .fill tr.only .goal{font-weight:400;font-size:15px} .fill .none{color:var(--soft)}
        .log{table-layout:fixed} .log td.box{min-width:0;height:34px;color:var(--soft);font-size:11px;text-align:center;vertical-align:bottom;padding:2px} .log th{padding-right:4px}
        .note{font-size:13px;color:var(--soft);margin:4px 0} .small{font-size:13px}
        td,th,li,p{overflow-wrap:break-word} .parts th,.job,.steps td:nth-child(3),.danger li{overflow-wrap:anywhere} .nm{white-space:nowrap;font-weight:600} .steps td:nth-child(4) div{margin-bottom:3px}
        @media screen and (max-width:820px){.who{grid-template-columns:1fr 1fr}}
        @media screen and (max-width:560px){.sheet h1{display:block} .sheet h1 span{display:block;text-align:left} .steps thead{display:none} .steps tbody tr{display:grid;grid-template-columns:30px 26px minmax(0,1fr);border-bottom:1px solid var(--soft)} .steps tbody td,.steps tbody th{border:0;width:auto} .steps tbody th{grid-column:1/-1} .steps td:nth-child(4){grid-column:3;padding-top:0;width:auto} .danger ul{columns:1} .job{font-size:16px} .log td.box{font-size:9px} .log th{font-size:11px;padding-right:2px} .fill td.goal{font-size:15px;white-space:normal} .fill.angles .box,.fill.cold .box,.angles thead th:nth-child(3),.angles thead th:nth-child(4),.angles thead th:nth-child(7),.angles thead th:nth-child(8),.cold:not(.split) thead th:nth-child(6),.cold thead th:nth-child(7),.cold thead th:nth-child(8){display:none} .angles thead th:first-child{width:22%} .angles thead th:nth-child(2),.angles thead th:nth-child(5){width:30%} .angles thead th:nth-child(6){width:18%} th,td{padding-right:6px}}
        @media print{.sheet{break-before:page;margin-top:0} .sheet:first-child{break-before:auto} .sheet h1{font-size:17pt} .sheet h1 span{font-size:9.5pt} .job{font-size:11.5pt;margin-top:8pt} .who div{min-height:11mm;font-size:7.5pt} .danger{margin-top:9pt;padding:6pt 9pt 1pt} .stage th{font-size:10pt;padding-top:7pt;break-after:avoid} .stage{break-after:avoid} .fill td.goal{font-size:11.5pt} .fill tr.only .goal{font-size:9.5pt} .fill td.box,.fill th.box{height:7mm} .danger ul{font-size:8.3pt} .danger li{margin-bottom:3pt} .log td.box{height:7mm;font-size:7pt} .steps td{font-size:8.8pt;padding-top:2pt;padding-bottom:2pt} .steps td:nth-child(4) div{margin-bottom:1pt} .read td,.read th{font-size:8.8pt} .later{break-inside:avoid} .note,.small{font-size:8pt}}

        """);
}
