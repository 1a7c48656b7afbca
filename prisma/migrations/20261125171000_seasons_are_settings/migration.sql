-- Seasons are few and are changed together with the other planning settings of the workshop.
DROP TABLE season;
