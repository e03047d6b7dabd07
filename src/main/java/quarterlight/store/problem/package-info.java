/** Why a visit cannot be made, opened, read or saved. */
package quarterlight.store.problem;
