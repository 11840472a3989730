namespace SetupService.Api.Tests.Drawings;

/// <summary>
/// How wide a text is in DejaVu Sans 2.37, one of the widest faces that stand for "sans-serif": the advance widths of its hmtx
/// tables, in 2048ths of the font size, for the characters from space to tilde.
/// </summary>
internal static class FaceWidths
{
    private const double UnitsPerEm = 2048;
    private const int Minus = 1716;
    private const int Degree = 1024;

    private static readonly int[] Regular =
    [
        651, 821, 942, 1716, 1303, 1946, 1597, 563, 799, 799, 1024, 1716, 651, 739, 651, 690,
        1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 690, 690, 1716, 1716, 1716, 1087,
        2048, 1401, 1405, 1430, 1577, 1294, 1178, 1587, 1540, 604, 604, 1343, 1141, 1767, 1532, 1612,
        1235, 1612, 1423, 1300, 1251, 1499, 1401, 2025, 1403, 1251, 1403, 799, 690, 799, 1716, 1024,
        1024, 1255, 1300, 1126, 1300, 1260, 721, 1300, 1298, 569, 569, 1186, 569, 1995, 1298, 1253,
        1300, 1300, 842, 1067, 803, 1298, 1212, 1675, 1212, 1212, 1075, 1303, 690, 1303, 1716,
    ];

    private static readonly int[] Bold =
    [
        713, 934, 1067, 1716, 1425, 2052, 1786, 627, 936, 936, 1071, 1716, 778, 850, 778, 748,
        1425, 1425, 1425, 1425, 1425, 1425, 1425, 1425, 1425, 1425, 819, 819, 1716, 1716, 1716, 1188,
        2048, 1585, 1561, 1503, 1700, 1399, 1399, 1681, 1714, 762, 762, 1587, 1305, 2038, 1714, 1741,
        1501, 1741, 1577, 1475, 1397, 1663, 1585, 2259, 1579, 1483, 1485, 936, 748, 936, 1716, 1024,
        1024, 1382, 1466, 1214, 1466, 1389, 891, 1466, 1458, 702, 702, 1362, 702, 2134, 1458, 1407,
        1466, 1466, 1010, 1219, 979, 1458, 1335, 1892, 1321, 1335, 1192, 1458, 748, 1458, 1716,
    ];

    public static double Of(string text, double size, bool isBold)
    {
        var widths = isBold ? Bold : Regular;
        return size * text.Sum(letter => letter switch { '−' => Minus, '°' => Degree, _ => widths[letter - ' '] }) / UnitsPerEm;
    }
}
