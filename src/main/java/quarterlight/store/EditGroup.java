package quarterlight.store;

/**
 * Ties the transactions of one long piece of work (an intake in batches) into one undo step, as long as nothing else
 * is edited between them. Told apart by identity.
 */
public final class EditGroup {}
