package org.hearthrule.page.frame;

/** One part of the page, such as the log. */
public interface Feature {

    /** Adds the addresses it answers. Called once, when the page starts. */
    void addTo(Routes routes);
}
