package plantair;

import java.time.Clock;
import java.util.List;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Bean;

/** Starts Plant Air Records. */
@SpringBootApplication
public class PlantAirApplication {

    /** The option that makes all results anew and ends, without serving pages. */
    private static final String REBUILD_RESULTS = "rebuild-results";

    public static void main(String[] args) {
        DurableFiles.register();
        var application = new SpringApplication(PlantAirApplication.class);
        if (List.of(args).contains("--" + REBUILD_RESULTS)) {
            application.setWebApplicationType(WebApplicationType.NONE);
        }
        application.run(args);
    }

    /** The only source of "now" in the application. */
    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }
}
