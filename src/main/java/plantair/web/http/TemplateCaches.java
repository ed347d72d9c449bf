package plantair.web.http;

import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.thymeleaf.cache.StandardCacheManager;
import org.thymeleaf.spring6.SpringTemplateEngine;

/**
 * Lets every template and every expression of every page stay read. Thymeleaf keeps 200 and 500 of them unless told
 * otherwise, too few for the pages here, so that each page put out what the next one needed.
 */
@Configuration(proxyBeanMethods = false)
class TemplateCaches {

    /** A template counts once for each page and fragment that uses it. */
    private static final int TEMPLATES = 2_000;

    private static final int EXPRESSIONS = 20_000;

    @Bean
    static BeanPostProcessor templatesStayRead() {
        return new BeanPostProcessor() {
            @Override
            public Object postProcessBeforeInitialization(Object bean, String name) {
                if (bean instanceof SpringTemplateEngine engine) {
                    engine.setCacheManager(caches());
                }
                return bean;
            }
        };
    }

    private static StandardCacheManager caches() {
        var caches = new StandardCacheManager();
        caches.setTemplateCacheMaxSize(TEMPLATES);
        caches.setExpressionCacheMaxSize(EXPRESSIONS);
        return caches;
    }
}
