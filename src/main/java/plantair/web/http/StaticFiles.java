package plantair.web.http;

import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.resource.ResourceUrlEncodingFilter;

/**
 * Leaves links as they are written. Spring Boot puts a filter in because of the locator of the style sheet's and the chart's
 * files, which looks for every link of every page among the static files, in every archive, and keeps each address that it
 * did not find: a fifth of the time, and memory that grows with the records.
 */
@Configuration(proxyBeanMethods = false)
class StaticFiles {

    @Bean
    FilterRegistrationBean<ResourceUrlEncodingFilter> linksAsTheyAre() {
        var filter = new FilterRegistrationBean<>(new ResourceUrlEncodingFilter());
        filter.setEnabled(false);
        return filter;
    }
}
