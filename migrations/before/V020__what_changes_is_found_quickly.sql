-- Each check asks which checks were corrected since, and which work on its parts was asked for.
CREATE INDEX bow_check_correcting ON bow_check (corrects_id) WHERE corrects_id IS NOT NULL;
CREATE INDEX upkeep_task_of_item ON upkeep_task (item_id);
