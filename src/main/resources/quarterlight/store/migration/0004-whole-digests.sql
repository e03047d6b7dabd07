-- The whole digest stands in the name of every original, so that no two can share one. The files follow by and by (EarlierNames); a name that
-- would become too long for a disk stays as it is.

UPDATE photo SET stored = 'originals/' || sha256 || substr(stored, 23)
 WHERE substr(stored, 1, 23) = 'originals/' || substr(sha256, 1, 12) || '-'
   AND length(CAST(stored AS BLOB)) <= 203;

-- Two photos that still share a name are told apart; only one of them can have its file.
UPDATE photo SET stored = 'originals/' || sha256 || '-' || id
 WHERE stored IN (SELECT stored FROM photo GROUP BY stored HAVING count(*) > 1);

CREATE UNIQUE INDEX photo_by_stored ON photo (stored);
