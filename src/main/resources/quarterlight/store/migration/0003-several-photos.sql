-- A statement may be shown by several photos: photo_id is the first, the numbers of the others stand between blanks.

ALTER TABLE statement ADD COLUMN more_photo_ids TEXT
    CHECK (more_photo_ids <> '' AND more_photo_ids NOT GLOB '*[^0-9 ]*');
