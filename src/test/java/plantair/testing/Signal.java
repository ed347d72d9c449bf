package plantair.testing;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** A wire between a browser and the application that can be cut, also between a request and its answer. */
public final class Signal implements AutoCloseable {

    private final ServerSocket door;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private volatile int target;
    private volatile boolean on = true;
    private volatile @Nullable String lose;
    private volatile int lost;

    private Signal(String baseUrl) throws IOException {
        target = URI.create(baseUrl).getPort();
        door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        start(this::accept);
    }

    /** To the application at an address. */
    public static Signal to(String baseUrl) {
        try {
            return new Signal(baseUrl);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** What the browser calls. */
    public String baseUrl() {
        return "http://127.0.0.1:" + door.getLocalPort();
    }

    /** To the application after a restart. */
    public void moveTo(String otherBaseUrl) {
        target = URI.create(otherBaseUrl).getPort();
    }

    /** Nothing goes through any more. */
    public void cut() {
        on = false;
        open.forEach(Signal::shut);
    }

    public void mend() {
        on = true;
        lose = null;
    }

    /** The next request that begins so arrives, but its answer is lost, and nothing goes through from then on. */
    public void loseAnswerTo(String beginning) {
        lose = beginning;
    }

    /** How many answers were lost. */
    public int lost() {
        return lost;
    }

    private void accept() {
        while (!door.isClosed()) {
            try {
                Socket caller = door.accept();
                if (on) {
                    connect(caller);
                } else {
                    shut(caller);
                }
            } catch (IOException gone) {
                // the next one may get through
            }
        }
    }

    private void connect(Socket caller) throws IOException {
        Socket application = new Socket(InetAddress.getLoopbackAddress(), target);
        open.add(caller);
        open.add(application);
        boolean[] losing = {false};
        start(() -> pump(caller, application, losing, true));
        start(() -> pump(application, caller, losing, false));
    }

    private void pump(Socket from, Socket to, boolean[] losing, boolean asking) {
        byte[] some = new byte[16384];
        try (from;
                to) {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            for (int n = in.read(some); n > 0; n = in.read(some)) {
                String text = new String(some, 0, n, StandardCharsets.ISO_8859_1);
                String wanted = lose;
                if (asking && wanted != null && text.startsWith(wanted)) {
                    losing[0] = true;
                    lose = null;
                } else if (!asking && losing[0]) {
                    lost++;
                    cut(); // a browser asks again by itself when only the connection was lost
                    return;
                }
                out.write(some, 0, n);
                out.flush();
            }
        } catch (IOException cut) {
            // as on a bad line
        } finally {
            open.remove(from);
            open.remove(to);
        }
    }

    private static void start(Runnable work) {
        var thread = new Thread(work, "signal");
        thread.setDaemon(true);
        thread.start();
    }

    private static void shut(Socket socket) {
        try {
            socket.close();
        } catch (IOException closed) {
            // it is what was wanted
        }
    }

    @Override
    public void close() {
        cut();
        try {
            door.close();
        } catch (IOException closed) {
            // it is what was wanted
        }
    }
}
