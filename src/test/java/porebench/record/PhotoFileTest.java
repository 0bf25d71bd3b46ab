package porebench.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.method.Answer;
import porebench.method.Problem;

/** What is taken as the photo of a sheet: pictures of two kinds by how their bytes begin, and none above the limit. */
class PhotoFileTest {
    /** The SHA-256 of three bytes, computed by {@code printf '\xff\xd8\xff' | sha256sum}. */
    private static final String OF_THREE_BYTES = "6e568e1f67fba258184c78181539e5e8fdee447e49bb706fc0ea34fbf12336a5";

    private static List<String> codes(Answer<PhotoFile> answer) {
        return answer.problems().stream().map(Problem::code).toList();
    }

    @Test
    void theLimitItselfIsTakenAndOneByteMoreIsNot() {
        PhotoFile largest = SamplePhotos.file(SamplePhotos.jpeg(PhotoFile.LARGEST, 1));
        assertThat(largest.size()).isEqualTo(10_000_000);
        Answer<PhotoFile> more = PhotoFile.of(SamplePhotos.jpeg(PhotoFile.LARGEST + 1, 1));
        assertThat(codes(more)).containsExactly("photo.too-large");
        assertThat(more.problems().get(0).values()).containsExactly(10);
    }

    @Test
    void whatItIsFollowsFromHowItBegins() {
        assertThat(SamplePhotos.file(SamplePhotos.jpeg(100, 1)).type()).isEqualTo(PhotoType.JPEG);
        assertThat(SamplePhotos.file(SamplePhotos.png(100, 1)).type()).isEqualTo(PhotoType.PNG);
        assertThat(PhotoFile.of(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF})
                        .value())
                .isPresent();
    }

    @Test
    void anythingElseIsRefused() {
        byte[] png = SamplePhotos.png(20, 1);
        png[7] ^= 1;
        for (byte[] bytes : List.of(
                new byte[0],
                new byte[] {(byte) 0xFF, (byte) 0xD8},
                "GIF89a and more".getBytes(StandardCharsets.US_ASCII),
                "%PDF-1.7".getBytes(StandardCharsets.US_ASCII),
                "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII),
                Arrays.copyOf(png, 7),
                png)) {
            assertThat(codes(PhotoFile.of(bytes))).containsExactly("photo.not-a-picture");
        }
    }

    @Test
    void itsBytesAreThoseGivenWhateverBecomesOfTheArray() throws IOException {
        byte[] bytes = SamplePhotos.jpeg(1000, 1);
        byte[] given = bytes.clone();
        PhotoFile file = SamplePhotos.file(given);
        given[500] ^= 1;
        file.bytes()[500] ^= 1;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        file.writeTo(out);
        assertThat(out.toByteArray()).isEqualTo(bytes);
        assertThat(file.open().readAllBytes()).isEqualTo(bytes);
    }

    @Test
    void twoFilesAreEqualWhenTheirBytesAre() {
        PhotoFile file = SamplePhotos.file(SamplePhotos.jpeg(1000, 1));
        PhotoFile known = PhotoFile.stated(PhotoType.JPEG, 1000, file.sha256());
        assertThat(known).isEqualTo(file).hasSameHashCodeAs(file);
        assertThat(SamplePhotos.file(SamplePhotos.jpeg(1000, 2))).isNotEqualTo(file);
        assertThat(PhotoFile.stated(PhotoType.PNG, 1000, file.sha256())).isNotEqualTo(file);
        assertThat(PhotoFile.stated(PhotoType.JPEG, 999, file.sha256())).isNotEqualTo(file);
        assertThat(file.name()).isEqualTo("photo-" + file.sha256() + ".jpg").isEqualTo(known.name());
    }

    @Test
    void whatIsOnlyKnownHasNoBytesUntilSomebodyReadsThem() {
        byte[] bytes = SamplePhotos.png(50, 1);
        PhotoFile known =
                PhotoFile.stated(PhotoType.PNG, 50, SamplePhotos.file(bytes).sha256());
        assertThat(known.hasBytes()).isFalse();
        assertThatIllegalStateException().isThrownBy(known::bytes).withMessageContaining("must be here");
        assertThat(known.readBy(() -> bytes).bytes()).isEqualTo(bytes);
    }

    @Test
    void aHashIsSixtyFourSmallHexadecimalDigits() {
        assertThat(PhotoFile.isHash("0123456789abcdef".repeat(4))).isTrue();
        for (String other : List.of("", "0123456789ABCDEF".repeat(4), "0".repeat(63), "0".repeat(65), "g".repeat(64))) {
            assertThat(PhotoFile.isHash(other)).isFalse();
            assertThatIllegalArgumentException().isThrownBy(() -> PhotoFile.stated(PhotoType.PNG, 1, other));
        }
        byte[] three = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};
        assertThat(SamplePhotos.file(three).sha256()).isEqualTo(OF_THREE_BYTES);
    }
}
