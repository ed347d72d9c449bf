package plantair;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Tells whoever started the application where to find it. */
@Component
final class StartMessage {

    private static final Logger LOG = LoggerFactory.getLogger(StartMessage.class);

    private final String host;

    StartMessage(@Value("${server.address:127.0.0.1}") String host) {
        this.host = host.equals("0.0.0.0") ? "127.0.0.1" : host;
    }

    @EventListener
    void sayWhere(ApplicationReadyEvent event) {
        if (event.getApplicationContext() instanceof WebServerApplicationContext web && web.getWebServer() != null) {
            LOG.info(
                    "Plant Air Records is ready: http://{}:{}/",
                    host,
                    web.getWebServer().getPort());
        }
    }
}
