using System.Net;
using System.Net.NetworkInformation;
using System.Net.WebSockets;
using Xunit;

namespace Jackwork.Tests.Bench;

/// <summary>The bench answers its own page and nobody else.</summary>
[Trait("Proof", "property")]
public sealed class HostTests(FlatBench bench) : IClassFixture<FlatBench>
{
    private static readonly HttpClient Client = new();

    [Theory]
    [InlineData("/", null, null, HttpStatusCode.OK)]
    [InlineData("/", "OWN", "http://OWN", HttpStatusCode.OK)]
    [InlineData("/", "evil.example", null, HttpStatusCode.Forbidden)]
    [InlineData("/", "localhost:1", null, HttpStatusCode.Forbidden)]
    [InlineData("/", "OWN", "http://evil.example", HttpStatusCode.Forbidden)]
    [InlineData("/", "OWN", "null", HttpStatusCode.Forbidden)]
    [InlineData("/_blazor/negotiate", "OWN", "http://evil.example", HttpStatusCode.Forbidden)]
    [InlineData("/open/guess/poses", null, null, HttpStatusCode.NotFound)]
    [InlineData("/web/1/..%2f..%2fpasswd", null, null, HttpStatusCode.NotFound)]
    public async Task OnlyItsOwnPageIsAnswered(string path, string? host, string? origin, HttpStatusCode status)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(bench.Address, path));
        request.Headers.Host = host?.Replace("OWN", bench.Address.Authority, StringComparison.Ordinal);
        if (origin is not null)
        {
            request.Headers.Add("Origin", origin.Replace("OWN", bench.Address.Authority, StringComparison.Ordinal));
        }

        using var answer = await Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(status, answer.StatusCode);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("http://evil.example")]
    public async Task ASocketFromElsewhereIsRefused(string? origin)
    {
        using var socket = new ClientWebSocket();
        if (origin is not null)
        {
            socket.Options.SetRequestHeader("Origin", origin);
        }

        var refused = await Assert.ThrowsAsync<WebSocketException>(() => socket.ConnectAsync(new($"ws://{bench.Address.Authority}/_blazor?id=x"), TestContext.Current.CancellationToken));
        Assert.Contains("403", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ThePageMayLoadNothingFromElsewhere()
    {
        using var answer = await Client.GetAsync(bench.Address, TestContext.Current.CancellationToken);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
        Assert.DoesNotMatch("(src|href)=\"(https?:)?//", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public void ItListensOnTheLoopbackOnly()
    {
        var own = IPGlobalProperties.GetIPGlobalProperties().GetActiveTcpListeners().Where(l => l.Port == bench.Address.Port).ToList();
        Assert.NotEmpty(own);
        Assert.All(own, l => Assert.True(IPAddress.IsLoopback(l.Address), l.ToString()));
    }
}
