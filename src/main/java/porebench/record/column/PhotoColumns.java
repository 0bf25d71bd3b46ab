package porebench.record.column;

import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.PhotoFile;
import porebench.record.PhotoType;
import porebench.record.SheetPhoto;
import porebench.record.id.PhotoId;
import porebench.record.id.TrialId;

/** The columns of a photo of a signed sheet; its bytes stand elsewhere, and its SHA-256 says which they are. */
public final class PhotoColumns {
    public static final Column<SheetPhoto, PhotoId> ID =
            Column.needed("photo_id", CellType.word(PhotoId::new, PhotoId::text), SheetPhoto::id);
    public static final Column<SheetPhoto, TrialId> TRIAL =
            Column.needed("trial_id", CellType.word(TrialId::new, TrialId::text), SheetPhoto::trialId);
    public static final Column<SheetPhoto, String> FILE_NAME =
            Column.needed("file_name", CellType.said(), SheetPhoto::fileName);
    public static final Column<SheetPhoto, PhotoType> TYPE = Column.needed(
            "media_type",
            CellType.choice(PhotoType.values(), PhotoType::symbol),
            photo -> photo.file().type());
    public static final Column<SheetPhoto, Integer> SIZE =
            Column.needed("byte_count", CellType.whole(1), photo -> photo.file().size());
    public static final Column<SheetPhoto, String> HASH = Column.needed(
            "sha256",
            CellType.word()
                    .checked(hash -> PhotoFile.isHash(hash)
                            ? Optional.empty()
                            : Optional.of(Problem.error("sha256", "photo.hash-form"))),
            photo -> photo.file().sha256());
    public static final Column<SheetPhoto, Boolean> WITHDRAWN = Column.mark("withdrawn", SheetPhoto::withdrawn);

    public static final Columns<SheetPhoto> ALL = new Columns<>(
            "sheet_photo",
            List.of(ID, TRIAL, FILE_NAME, TYPE, SIZE, HASH, WITHDRAWN),
            PhotoColumns::made,
            13,
            any -> List.of());

    private PhotoColumns() {}

    private static SheetPhoto made(Cells cells) {
        return new SheetPhoto(
                cells.get(ID),
                cells.get(TRIAL),
                cells.get(FILE_NAME),
                PhotoFile.stated(cells.get(TYPE), cells.get(SIZE), cells.get(HASH)),
                cells.is(WITHDRAWN));
    }
}
