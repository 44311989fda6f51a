package org.hearthrule.page;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.hearthrule.page.checklist.ChecklistPages;
import org.hearthrule.page.family.FamilyPages;
import org.hearthrule.page.frame.Door;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.House;
import org.hearthrule.page.frame.Settings;
import org.hearthrule.page.keeping.CalendarPages;
import org.hearthrule.page.keeping.CopiesPages;
import org.hearthrule.page.law.ComparePages;
import org.hearthrule.page.law.LawPages;
import org.hearthrule.page.log.LogPages;
import org.hearthrule.page.readiness.ReadinessPages;
import org.hearthrule.page.records.AnswerPages;
import org.hearthrule.page.records.FilePages;
import org.hearthrule.page.records.PhotoPages;
import org.hearthrule.page.records.RecordPages;
import org.hearthrule.page.tables.TablePages;
import org.hearthrule.page.welcome.WelcomePages;
import org.hearthrule.page.year.YearPages;

/** The local page: listens on this machine's own loopback address and nowhere else. */
public final class PageServer implements AutoCloseable {

    /** Bytes of one file that is sent; a large photo has some 15 million. */
    private static final int FILE_MEGABYTES = 40;
    private static final int REQUEST_MEGABYTES = 400;
    private static final int IN_MEMORY_KILOBYTES = 256;
    private static final int FORM_BYTES = 1_000_000;
    private static final int FORM_KEYS = 4_000;
    private static final int THREADS = 16;
    private static final int THREADS_READY = 4;

    private final House house;
    private final Door door;
    private final Javalin server;
    private final Path incoming;

    private PageServer(House house, Door door, Javalin server, Path incoming) {
        this.house = house;
        this.door = door;
        this.server = server;
        this.incoming = incoming;
    }

    /** Every part of the page. */
    private static List<Feature> features() {
        List<Feature> features = new ArrayList<>();
        features.add(new WelcomePages());
        features.add(new ChecklistPages());
        features.add(new AnswerPages());
        features.add(new FamilyPages());
        features.add(new LogPages());
        features.add(new YearPages());
        features.add(new CopiesPages());
        features.add(new CalendarPages());
        features.add(new TablePages());
        features.add(new PhotoPages());
        features.add(new FilePages());
        features.addAll(RecordPages.all());
        features.addAll(List.of(new ReadinessPages(), new LawPages(), new ComparePages()));
        return features;
    }

    /**
     * Starts to listen.
     *
     * @throws IOException when the port is taken or a folder cannot be made
     */
    public static PageServer start(Settings settings) throws IOException {
        House house = new House(settings);
        house.prepare();
        Door door = new Door(house);
        Path incoming = Files.createTempDirectory("hearthrule-incoming-");
        incoming.toFile().deleteOnExit();
        Javalin server = Javalin.create(config -> configure(config, settings, door, incoming));
        try {
            server.start();
        } catch (RuntimeException e) {
            throw new IOException("the port " + settings.port() + " cannot be listened on", e);
        }
        door.listensOn(server.port());
        return new PageServer(house, door, server, incoming);
    }

    private static void configure(JavalinConfig config, Settings settings, Door door, Path incoming) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.compressionStrategy = CompressionStrategy.NONE;
        config.http.maxRequestSize = FORM_BYTES;
        config.jetty.host = "127.0.0.1";
        config.jetty.port = settings.port();
        QueuedThreadPool threads = new QueuedThreadPool(THREADS, THREADS_READY);
        threads.setName("page");
        config.jetty.threadPool = threads;
        config.jetty.multipartConfig.cacheDirectory(incoming.toString());
        config.jetty.multipartConfig.maxFileSize(FILE_MEGABYTES, SizeUnit.MB);
        config.jetty.multipartConfig.maxTotalRequestSize(REQUEST_MEGABYTES, SizeUnit.MB);
        config.jetty.multipartConfig.maxInMemoryFileSize(IN_MEMORY_KILOBYTES, SizeUnit.KB);
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setSendXPoweredBy(false);
        });
        config.jetty.modifyServletContextHandler(context -> {
            context.setMaxFormContentSize(FORM_BYTES);
            context.setMaxFormKeys(FORM_KEYS);
        });
        door.open(config, features());
    }

    /** @return an address that opens the page once; the one before is good no longer */
    public String newStartAddress() {
        return door.newStartAddress();
    }

    public int port() {
        return server.port();
    }

    public House house() {
        return house;
    }

    Server jetty() {
        return server.jettyServer().server();
    }

    @Override
    public void close() {
        server.stop();
        // empty by now; what is not is deleted when the program ends
        incoming.toFile().delete();
    }
}
