using System.Net;
using System.Net.Sockets;

namespace AdviceService.Tests;

/// <summary>Ports of loopback for programs that cannot say which one they got.</summary>
internal static class Port
{
    /// <summary>One that nobody listened on just now.</summary>
    public static int Free()
    {
        using var socket = new TcpListener(IPAddress.Loopback, 0);
        socket.Start();
        return ((IPEndPoint)socket.LocalEndpoint).Port;
    }
}
