-- The lens of a photo as its Exif tells it: the focal length that shows the same field on film of 36 x 24 mm, by the diagonal. Photos that were
-- taken in before have none; the usual lens is assumed for them, as before.

ALTER TABLE photo ADD COLUMN focal_35_mm REAL CHECK (focal_35_mm > 0 AND focal_35_mm <= 10000);
