package plantair;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts Plant Air Records. */
@SpringBootApplication
public class PlantAirApplication {

    public static void main(String[] args) {
        SpringApplication.run(PlantAirApplication.class, args);
    }
}
