package plantair;

import java.time.Clock;
import java.util.List;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Bean;
import plantair.backup.BackupCommands;

/** Starts Plant Air Records. */
@SpringBootApplication
public class PlantAirApplication {

    /** The option that makes all results anew and ends, without serving pages. */
    private static final String REBUILD_RESULTS = "rebuild-results";

    public static void main(String[] args) {
        DurableFiles.register();
        if (BackupCommands.isOne(args)) {
            System.exit(BackupCommands.run(args));
        }
        var application = new SpringApplication(PlantAirApplication.class);
        boolean endsByItself = List.of(args).contains("--" + REBUILD_RESULTS);
        if (endsByItself) {
            application.setWebApplicationType(WebApplicationType.NONE);
        }
        var running = application.run(args);
        if (endsByItself) {
            running.close();
        }
    }

    /** The only source of "now" in the application. */
    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }
}
