package quarterlight.store.log;

import java.util.Optional;

/**
 * An entry of the edit log as it stands in its table.
 *
 * @param who the inspector as the visit named one at the time
 * @param changes the rows that it changed, as {@link RowStates} writes them; absent in visits made before there was a chain
 * @param hash absent likewise
 */
record ChainedEntry(
        long id,
        String at,
        String label,
        String summary,
        Optional<String> who,
        Optional<String> changes,
        Optional<String> hash) {}
