package plantair.web;

import org.springframework.boot.SpringApplication;

/** Starts the sample site by hand, to look at the furniture in a browser. */
final class SampleSiteServer {
    private SampleSiteServer() {}

    public static void main(String[] args) {
        SpringApplication.run(new Class<?>[] {SampleSite.class, SampleSite.Pages.class}, args);
    }
}
