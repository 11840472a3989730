using System.Text;
using SetupService.Domain.Fitment.Outlines;

namespace SetupService.Api.Drawings;

/// <summary>
/// Turns outlines into path data. The picture's x runs to the right and the outboard side of a left wheel seen from behind is
/// on the left, so x = −station; its y runs down, so y = −height.
/// </summary>
internal static class SvgPath
{
    public static double X(double stationMm) => -stationMm;

    public static double Y(double heightMm) => -heightMm;

    public static string From(Outline outline, bool closed)
    {
        var data = new StringBuilder("M");
        Append(data, outline.Start);
        foreach (var step in outline.Steps)
        {
            if (step.IsStraight)
            {
                Append(data.Append('L'), step.End);
                continue;
            }

            Append(data.Append('C'), step.FirstControl);
            Append(data.Append(' '), step.SecondControl);
            Append(data.Append(' '), step.End);
        }

        return closed ? data.Append('Z').ToString() : data.ToString();
    }

    public static string FromPolygon(IReadOnlyList<OutlinePoint> points)
    {
        var data = new StringBuilder();
        for (var i = 0; i < points.Count; i++) Append(data.Append(i == 0 ? 'M' : 'L'), points[i]);
        return data.Append('Z').ToString();
    }

    private static void Append(StringBuilder data, OutlinePoint point) =>
        data.Append(SvgNumber.Write(X(point.StationMm))).Append(' ').Append(SvgNumber.Write(Y(point.HeightMm)));
}
