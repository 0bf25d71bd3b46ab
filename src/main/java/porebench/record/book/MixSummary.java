package porebench.record.book;

import porebench.record.id.MixId;

/**
 * How a mix stands, as it is kept beside the entries; what the texts mean is known to whoever wrote them.
 *
 * @param mixId the mix
 * @param registerLine its line in the register
 * @param trials its trials that count
 */
public record MixSummary(MixId mixId, String registerLine, String trials) {}
