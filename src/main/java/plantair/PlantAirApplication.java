package plantair;

import java.time.Clock;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Bean;

/** Starts Plant Air Records. */
@SpringBootApplication
public class PlantAirApplication {

    public static void main(String[] args) {
        SpringApplication.run(PlantAirApplication.class, args);
    }

    /** The only source of "now" in the application. */
    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }
}
