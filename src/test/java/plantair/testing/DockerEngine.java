package plantair.testing;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.net.StandardProtocolFamily;
import java.net.URI;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;

/** Asks the Docker engine for a sign of life and waits two seconds at most; a library's own search can take minutes. */
final class DockerEngine {

    private static final String PING = "GET /_ping HTTP/1.0\r\nHost: docker\r\n\r\n";

    private DockerEngine() {}

    static boolean answers(@Nullable String dockerHost) {
        try (SocketChannel channel = SocketChannel.open(family(dockerHost))) {
            return CompletableFuture.supplyAsync(() -> ping(channel, address(dockerHost)))
                    .get(2, TimeUnit.SECONDS);
        } catch (IOException | ExecutionException | TimeoutException | RuntimeException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static StandardProtocolFamily family(@Nullable String dockerHost) {
        return dockerHost == null || dockerHost.startsWith("unix:")
                ? StandardProtocolFamily.UNIX
                : StandardProtocolFamily.INET;
    }

    private static SocketAddress address(@Nullable String dockerHost) {
        URI uri = URI.create(dockerHost == null ? "unix:///var/run/docker.sock" : dockerHost);
        return "unix".equals(uri.getScheme())
                ? UnixDomainSocketAddress.of(uri.getPath())
                : new InetSocketAddress(uri.getHost(), uri.getPort());
    }

    private static boolean ping(SocketChannel channel, SocketAddress address) {
        try {
            channel.connect(address);
            channel.write(ByteBuffer.wrap(PING.getBytes(StandardCharsets.US_ASCII)));
            ByteBuffer answer = ByteBuffer.allocate(64);
            channel.read(answer);
            return new String(answer.array(), 0, answer.position(), StandardCharsets.US_ASCII).contains(" 200 ");
        } catch (IOException e) {
            return false;
        }
    }
}
