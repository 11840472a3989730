namespace SetupService.Api.Tests.Contract;

/// <summary>The committed files of the contract, found from the test's own place upwards.</summary>
internal static class ContractFile
{
    public static string Path(string name)
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(System.IO.Path.Combine(folder.FullName, "SetupService.sln")))
                return System.IO.Path.Combine(folder.FullName, "api", name);
        }

        throw new InvalidOperationException("The tests run outside the repository.");
    }
}
