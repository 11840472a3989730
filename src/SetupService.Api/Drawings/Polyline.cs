using System.Text;

namespace SetupService.Api.Drawings;

/// <summary>Path data of straight lines through points of the picture.</summary>
internal static class Polyline
{
    public static string Of(IReadOnlyList<(double X, double Y)> points, bool closed = false)
    {
        var data = new StringBuilder(14 * points.Count);
        for (var i = 0; i < points.Count; i++)
        {
            data.Append(i == 0 ? 'M' : 'L').Append(SvgNumber.Write(points[i].X)).Append(' ').Append(SvgNumber.Write(points[i].Y));
        }

        return closed ? data.Append('Z').ToString() : data.ToString();
    }
}
