using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.AspNetCore.Server.Kestrel.Transport.Sockets;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;
using SetupService.Api.Host;

namespace SetupService.Api.Tests.Host;

/// <summary>How many connections are held at once, and what each may hold.</summary>
public sealed class ConnectionCapTests
{
    private const int Cap = 3;
    private const string Ask = "GET /health/live HTTP/1.1\r\nHost: test\r\n\r\n";

    [Fact]
    public async Task As_many_as_the_cap_are_answered_one_more_is_closed_and_a_place_that_is_left_is_free()
    {
        await using var service = await RunningService.StartAsync(configure: static builder => builder.Configuration["Caps:Connections"] = $"{Cap}");
        List<RawConnection> held = [];
        for (var i = 0; i < Cap; i++)
        {
            held.Add(await RawConnection.OpenAsync(service.Client));
            await held[i].SendAsync(Ask);
            await held[i].ReadUntilAsync("\"live\"");
        }

        using (var beyond = await RawConnection.OpenAsync(service.Client))
            Assert.Equal("", await ReadOrClosedAsync(beyond));
        held[0].Dispose();
        await UntilAnswered(service);
        held.ForEach(static one => one.Dispose());
    }

    [Theory]
    [InlineData(5000, null, 5000)]
    [InlineData(5000, 10_128L, 5000)]
    [InlineData(5000, 10_127L, 4999)]
    [InlineData(5000, 1024L, 448)]
    [InlineData(5000, 64L, 1)]
    public void The_cap_leaves_the_process_files_to_open(int wanted, long? files, long most) => Assert.Equal(most, OpenFiles.MostConnections(wanted, files));

    [Fact]
    public void The_systems_table_of_limits_is_read()
    {
        const string Table = "Limit                     Soft Limit           Hard Limit           Units     \nMax processes             96364                96364                processes \nMax open files            ";

        Assert.Equal(1024, OpenFiles.Read(Table + "1024                 524288               files     \n"));
        Assert.Null(OpenFiles.Read(Table + "unlimited            unlimited            files     \n"));
        Assert.Null(OpenFiles.Read(""));
    }

    [Fact]
    public async Task A_caller_who_does_not_read_holds_less_than_the_servers_own_limit_lets_him()
    {
        await using var service = await RunningService.StartAsync();

        Assert.Equal(131_072, service.Services.GetRequiredService<IOptions<SocketTransportOptions>>().Value.MaxReadBufferSize);
        Assert.Equal(131_072, service.Services.GetRequiredService<IOptions<KestrelServerOptions>>().Value.Limits.MaxRequestBufferSize);
    }

    private static async Task<string> ReadOrClosedAsync(RawConnection connection)
    {
        try
        {
            await connection.SendAsync(Ask);
            return await connection.ReadToEndAsync();
        }
        catch (IOException)
        {
            // A reset is a close too.
            return "";
        }
    }

    /// <summary>A connection that was left is told to the server a moment later.</summary>
    private static async Task UntilAnswered(RunningService service)
    {
        for (var wait = 0; wait < 500; wait++)
        {
            using var next = await RawConnection.OpenAsync(service.Client);
            try
            {
                await next.SendAsync(Ask);
                await next.ReadUntilAsync("\"live\"");
                return;
            }
            catch (Exception refused) when (refused is IOException or InvalidOperationException)
            {
                await Task.Delay(20);
            }
        }

        throw new InvalidOperationException("The place that was left is not free.");
    }
}
