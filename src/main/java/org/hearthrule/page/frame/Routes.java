package org.hearthrule.page.frame;

/** Takes the addresses of the features. Path parameters stand in braces: {@code /law/{code}}. */
public interface Routes {

    /** Something to look at; needs an open book, and leads to the welcome when there is none. Changes nothing. */
    void get(String path, Handler handler);

    /** Something to look at that needs no book, such as the law. */
    void getWithoutBook(String path, Handler handler);

    /** A change. Reached only with the token that stands in each form. */
    void post(String path, Handler handler);

    /** A change that needs no book, such as starting one. */
    void postWithoutBook(String path, Handler handler);
}
