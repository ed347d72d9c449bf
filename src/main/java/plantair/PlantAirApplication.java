package plantair;

import java.time.Clock;
import java.util.List;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Bean;
import plantair.backup.BackupCommands;
import plantair.operation.HealthCommand;

/** Starts Plant Air Records. */
@SpringBootApplication
public class PlantAirApplication {

    /** The option that makes all results anew and ends, without serving pages. */
    private static final String REBUILD_RESULTS = "rebuild-results";

    /** The command that checks whether the records are as they were recorded, and ends. */
    private static final String VERIFY = "verify";

    public static void main(String[] args) {
        DurableFiles.register();
        if (BackupCommands.isOne(args)) {
            System.exit(BackupCommands.run(args));
        }
        if (HealthCommand.isOne(args)) {
            System.exit(HealthCommand.run(args));
        }
        var application = new SpringApplication(PlantAirApplication.class);
        boolean command =
                List.of(args).contains("--" + REBUILD_RESULTS) || List.of(args).contains(VERIFY);
        if (command) {
            application.setWebApplicationType(WebApplicationType.NONE);
            application.setLazyInitialization(true); // the pages are not needed
        }
        var context = application.run(args);
        if (command) {
            System.exit(SpringApplication.exit(context));
        }
    }

    /** The only source of "now" in the application. */
    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }
}
