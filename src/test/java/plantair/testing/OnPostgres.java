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

/** As {@link OnH2}, on PostgreSQL; {@link PostgresServer} says which one. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Inherited
@SpringBootTest(
        webEnvironment = WebEnvironment.RANDOM_PORT,
        properties = {People.QUICK_HASH, OnH2.NO_WAIT, "plantair.backup.directory=target/backups"})
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
@Import({FixedClock.class, Database.class, People.class, PostgresConfiguration.class})
public @interface OnPostgres {}
