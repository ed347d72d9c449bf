package plantair.equipment.web;

import plantair.site.Site;

/**
 * What a form changes.
 *
 * @param id its id
 * @param name how people call it
 * @param siteId id of its site
 * @param siteName name of its site
 */
record Subject(long id, String name, long siteId, String siteName) {

    static Subject of(long id, String name, Site site) {
        return new Subject(id, name, site.id(), site.name());
    }
}
