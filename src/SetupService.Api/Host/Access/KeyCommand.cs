using System.Buffers.Text;
using System.Security.Cryptography;

namespace SetupService.Api.Host.Access;

/// <summary>The command <c>new-key NAME</c>: makes a key for a client, and says what goes into the settings and what to the client. Nothing is kept.</summary>
internal static class KeyCommand
{
    public const string Name = "new-key";

    /// <summary>Writes a new key; returns the exit code.</summary>
    /// <param name="args">The command, the client's name, and the service's secret in base64 where it has one already.</param>
    /// <param name="output">Where it is written.</param>
    public static int Run(string[] args, TextWriter output)
    {
        if (args.Length is < 2 or > 3)
        {
            output.WriteLine($"usage: {Name} NAME [HASH-SECRET]");
            return 2;
        }

        var secret = new byte[ClientKeys.KeyBytes];
        if (args.Length == 2)
        {
            RandomNumberGenerator.Fill(secret);
        }
        else if (!Convert.TryFromBase64String(args[2], secret = new byte[args[2].Length], out var length) || length < ClientKeys.KeyBytes)
        {
            output.WriteLine($"HASH-SECRET has at least {ClientKeys.KeyBytes} bytes in base64.");
            return 2;
        }
        else
        {
            secret = secret[..length];
        }

        var key = RandomNumberGenerator.GetBytes(ClientKeys.KeyBytes);
        output.WriteLine("For the client, to be sent in the header Api-Key; it is not shown again:");
        output.WriteLine(Base64Url.EncodeToString(key));
        output.WriteLine("For the settings, as environment variables:");
        if (args.Length == 2)
            output.WriteLine("Access__HashSecret=" + Convert.ToBase64String(secret));
        output.WriteLine($"Access__Clients__{args[1]}__Keys__0={Convert.ToHexStringLower(ClientKeys.Hash(secret, key))}");
        output.WriteLine($"Access__Clients__{args[1]}__SigningSecret={Convert.ToBase64String(RandomNumberGenerator.GetBytes(ClientKeys.KeyBytes))}");
        return 0;
    }
}
