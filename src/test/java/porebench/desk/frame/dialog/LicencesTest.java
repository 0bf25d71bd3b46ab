package porebench.desk.frame.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is handed out is listed with the version that is handed out, and its licence can be read. */
class LicencesTest {
    /** Jars that the tests bring, by the start of their names; none of them is handed out. */
    private static final Set<String> OF_TESTS = Set.of(
            "junit-",
            "assertj-",
            "archunit",
            "opentest4j",
            "apiguardian",
            "byte-buddy",
            "surefire",
            "maven-",
            "jmh-",
            "jopt-",
            "org.jacoco",
            "plexus-",
            "checker-",
            "pitest",
            "json-schema-validator-",
            "itu-",
            "jackson-core-3.",
            "jackson-dataformat-yaml-",
            "snakeyaml-engine-",
            "javax.inject",
            "common-java5",
            "validation-model",
            "parser-",
            "pdf-model",
            "core-1.",
            "verapdf-",
            "rhino-",
            "jaxb-",
            "javax.activation",
            "jackson-databind",
            "jackson-annotations",
            "stax-utils",
            "feature-reporting",
            "metadata-fixer");

    @Test
    void everyJarThatIsHandedOutIsListedWithItsVersion() {
        Set<String> listed = Licences.libraries().stream()
                .map(library -> library.jar() + "-" + library.version() + ".jar")
                .collect(Collectors.toSet());
        List<String> there = Stream.of(System.getProperty("java.class.path", "").split(java.io.File.pathSeparator))
                .map(path -> Path.of(path).getFileName())
                .map(String::valueOf)
                .filter(name -> name.endsWith(".jar"))
                .filter(name -> OF_TESTS.stream().noneMatch(name::startsWith))
                .toList();
        assertThat(there).hasSizeGreaterThan(30);
        assertThat(listed).containsAll(there);
        listed.removeAll(there);
        assertThat(listed)
                .as("listed, but not handed out")
                .allSatisfy(name -> assertThat(name).startsWith("porebench-"));
    }

    @Test
    void theWordsOfEveryLicenceCanBeRead() {
        assertThat(Licences.libraries()).allSatisfy(library -> {
            String[] name = library.licence().split("-", -1);
            assertThat(Licences.words(library)).as(library.name()).hasSizeGreaterThan(1000);
            if (name[0].equals("LGPL")) {
                assertThat(Licences.words(library)).contains("GNU LESSER GENERAL PUBLIC LICENSE", "Version 2.1");
            } else if (name[0].equals("Apache")) {
                assertThat(Licences.words(library)).contains("Apache License", "Version 2.0");
            } else if (name[0].equals("MIT")) {
                assertThat(Licences.words(library))
                        .containsIgnoringWhitespaces("Permission is hereby granted, free of charge");
            } else {
                assertThat(Licences.words(library)).contains("Redistribution and use in source and binary forms");
            }
        });
    }

    @Test
    void theTreeHasTheSameLicenceAndTheNoticeNamesWhatIsOfOthers() throws IOException {
        assertThat(Files.readString(Path.of("LICENSE"), StandardCharsets.UTF_8))
                .isEqualTo(Licences.words(Licences.libraries().get(0)));
        Licences.Library chart = Licences.libraries().stream()
                .filter(library -> library.jar().equals("jfreechart"))
                .findFirst()
                .orElseThrow();
        assertThat(Files.readString(Path.of("NOTICE"), StandardCharsets.UTF_8))
                .contains("lib/jfreechart-" + chart.version() + ".jar", "Roboto", "Apache Batik", "Apache PDFBox");
    }
}
