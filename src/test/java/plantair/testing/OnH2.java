package plantair.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.context.annotation.Import;

/**
 * The whole application on H2 in memory, on a free port. All classes with this annotation share one context and one
 * database as long as they add no property, bean or profile of their own; call {@link Database#wipe()} before each test
 * that counts rows.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Inherited
@SpringBootTest(
        webEnvironment = WebEnvironment.RANDOM_PORT,
        properties = {
            "spring.datasource.url=" + OnH2.URL,
            People.QUICK_HASH,
            OnH2.NO_WAIT,
            "plantair.backup.directory=target/backups"
        })
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
@Import({FixedClock.class, Database.class, People.class})
public @interface OnH2 {

    /** The compatibility settings of the application's own file, in memory. */
    String URL =
            "jdbc:h2:mem:plantair;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1;QUERY_CACHE_SIZE=256";

    /** A context that another one has put to rest would else wait half a minute for its scheduler at the end of the run. */
    String NO_WAIT = "spring.task.scheduling.shutdown.await-termination=false";
}
