package porebench.record;

import porebench.quantity.Require;
import porebench.record.id.PhotoId;
import porebench.record.id.TrialId;

/**
 * A photo of the signed sheet on which a trial was written down, kept with the trial.
 *
 * @param id its name, which begins with that of the trial
 * @param trialId the trial
 * @param fileName the name of the file it was read from, without its folder, not blank
 * @param file the file itself, its bytes only where they were read
 * @param withdrawn whether it no longer belongs to the trial; it is kept all the same
 */
public record SheetPhoto(PhotoId id, TrialId trialId, String fileName, PhotoFile file, boolean withdrawn)
        implements Kept {
    public SheetPhoto {
        fileName = Require.notBlank("fileName", fileName);
    }

    /** Returns the same photo with other bytes, or with its bytes. */
    public SheetPhoto with(PhotoFile other) {
        return new SheetPhoto(id, trialId, fileName, other, withdrawn);
    }

    /** Returns the same photo, which no longer belongs to its trial. */
    public SheetPhoto takenBack() {
        return new SheetPhoto(id, trialId, fileName, file, true);
    }

    @Override
    public RecordKind kind() {
        return RecordKind.SHEET_PHOTO;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}
