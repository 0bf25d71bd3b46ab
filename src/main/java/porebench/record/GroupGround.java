package porebench.record;

import porebench.record.id.GroupId;
import porebench.record.id.MixId;

/**
 * That a revision's factor is that of a group, and on which mix it was found.
 *
 * @param group the group
 * @param version its version, from 1
 * @param testedMix the mix that was tested
 */
public record GroupGround(GroupId group, int version, MixId testedMix) {}
