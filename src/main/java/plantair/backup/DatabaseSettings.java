package plantair.backup;

import org.h2.store.fs.FileUtils;
import org.springframework.core.env.Environment;

/** Where the database is, by the settings of the program. */
record DatabaseSettings(String url, String user, String password) {

    private static final String H2 = "jdbc:h2:";
    private static final String FILE = ".mv.db";

    static DatabaseSettings of(Environment environment) {
        return new DatabaseSettings(
                environment.getRequiredProperty("spring.datasource.url"),
                environment.getProperty("spring.datasource.username", ""),
                environment.getProperty("spring.datasource.password", ""));
    }

    /** Refuses what is no H2 file of this machine. */
    void requireFile() {
        boolean elsewhere = path().startsWith("mem:") || path().startsWith("tcp:") || path().startsWith("ssl:");
        if (!url.startsWith(H2) || elsewhere) {
            throw new BackupFailed("Only an H2 file is backed up and restored by this program, and this is " + url
                    + ". For PostgreSQL use pg_dump and pg_restore; docs/operating.md says how.");
        }
    }

    boolean exists() {
        return FileUtils.exists(file());
    }

    /** The file as H2 names it. */
    String file() {
        return path() + FILE;
    }

    private String path() {
        return url.substring(Math.min(H2.length(), url.length())).split(";", 2)[0];
    }

    /** The same settings for a file of another name beside it. */
    DatabaseSettings beside(String ending) {
        return new DatabaseSettings(url.replace(H2 + path(), H2 + path() + ending), user, password);
    }
}
