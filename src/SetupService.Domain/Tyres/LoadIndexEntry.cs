namespace SetupService.Domain.Tyres;

/// <summary>One row of the load index table.</summary>
/// <param name="LoadIndex">The index, 0 to 200.</param>
/// <param name="CapacityKg">The load it stands for, in kg.</param>
/// <param name="IsDisputed">True where published lists differ; the lower figure stands here.</param>
public readonly record struct LoadIndexEntry(int LoadIndex, double CapacityKg, bool IsDisputed);
