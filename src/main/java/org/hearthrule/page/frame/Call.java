package org.hearthrule.page.frame;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.InputStream;
import java.util.List;
import java.util.Map;

/** One call of a browser. Confined to the thread that answers it. */
public final class Call {

    private final Context context;
    private final House house;
    private Form form;

    Call(Context context, House house) {
        this.context = context;
        this.house = house;
    }

    /** @return the book that is open on the page; call only where a route asks for a book */
    public Desk desk() {
        return house.desk();
    }

    public House house() {
        return house;
    }

    /** @return where this page is, for example {@code http://127.0.0.1:8614} */
    public String address() {
        return "http://127.0.0.1:" + context.req().getLocalPort();
    }

    /** @return the address, without host and query */
    public String path() {
        return context.path();
    }

    /** @return the address with its query, to come back to */
    public String here() {
        return context.queryString() == null ? context.path() : context.path() + '?' + context.queryString();
    }

    /** @return a part of the address, decoded */
    public String path(String name) {
        return context.pathParam(name);
    }

    /** @return a value of the query; empty, never null, when it is not there */
    public String query(String name) {
        String value = context.queryParam(name);
        return value == null ? "" : value.strip();
    }

    /** @return the query as a form, for a search or a filter */
    public Form queryForm() {
        return Form.of(context.queryParamMap());
    }

    /** @return what was sent with a change */
    public Form form() {
        if (form == null) {
            form = Form.of(context.formParamMap());
        }
        return form;
    }

    /** @return the path that a form names to come back to, if it is one of this page; else the other one */
    public String back(String otherwise) {
        String back = form().raw("back");
        boolean ours = back.startsWith("/") && !back.startsWith("//") && back.indexOf('\\') < 0
                && back.chars().allMatch(c -> c > ' ' && c < 0x7F);
        return ours ? back : otherwise;
    }

    /** @return files that were sent, those left empty not among them */
    public List<Upload> files(String name) {
        return context.uploadedFiles(name).stream().filter(file -> file.size() > 0).map(Call::upload).toList();
    }

    private static Upload upload(UploadedFile file) {
        return new Upload(file.filename(), file.size(), file::content);
    }

    /** @return names and values of a form as they were sent */
    public Map<String, List<String>> sent() {
        return context.formParamMap();
    }

    /**
     * A file that was sent.
     *
     * @param name the sender's name of it: for reading only, never a path
     * @param size in bytes
     */
    public record Upload(String name, long size, Content content) {

        public InputStream open() {
            return content.open();
        }
    }

    /** Opens what was sent. */
    public interface Content {
        InputStream open();
    }
}
