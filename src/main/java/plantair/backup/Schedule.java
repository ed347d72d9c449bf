package plantair.backup;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * When a daily backup is due, and how many stay.
 *
 * @param at time of day
 * @param zone of the day
 * @param retention which ones stay
 */
@Component
public record Schedule(LocalTime at, ZoneId zone, Retention retention) {

    /** By the settings, in the time zone of the machine. */
    @Autowired
    Schedule(
            @Value("${plantair.backup.at:02:30}") String at,
            @Value("${plantair.backup.keep-daily:14}") int days,
            @Value("${plantair.backup.keep-monthly:24}") int months) {
        this(LocalTime.parse(at), ZoneId.systemDefault(), new Retention(days, months, ZoneId.systemDefault()));
    }

    /** The last moment at which one was to be made; one missed while the program stood still is made up for. */
    Instant lastDue(Instant now) {
        ZonedDateTime here = now.atZone(zone);
        ZonedDateTime today = here.toLocalDate().atTime(at).atZone(zone);
        return (today.isAfter(here) ? here.toLocalDate().minusDays(1).atTime(at).atZone(zone) : today).toInstant();
    }
}
