-- CreateTable
CREATE TABLE "workshop" (
    "id" INTEGER NOT NULL DEFAULT 1,
    "name" TEXT NOT NULL,
    "address_lines" TEXT[],
    "phone" TEXT,
    "email" TEXT,
    "market" TEXT NOT NULL,
    "languages" TEXT[],
    "currency" CHAR(3) NOT NULL,
    "time_zone" TEXT NOT NULL,
    "gs1_company_prefix" TEXT,
    "code_pattern" TEXT NOT NULL,
    "overhead_rule" TEXT NOT NULL,
    "overhead_value" DECIMAL(14,4) NOT NULL,
    "settings" JSONB NOT NULL DEFAULT '{}',
    "version" INTEGER NOT NULL DEFAULT 1,
    "updated_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "workshop_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "labour_rate" (
    "id" UUID NOT NULL,
    "role" TEXT NOT NULL,
    "rate_per_hour" DECIMAL(14,4) NOT NULL,
    "from_day" DATE NOT NULL,

    CONSTRAINT "labour_rate_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "vat_rate" (
    "id" UUID NOT NULL,
    "product_class" TEXT NOT NULL,
    "rate_percent" DECIMAL(6,3) NOT NULL,
    "from_day" DATE NOT NULL,

    CONSTRAINT "vat_rate_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "app_user" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "password_hash" TEXT NOT NULL,
    "pin_hash" TEXT,
    "active" BOOLEAN NOT NULL DEFAULT true,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "app_user_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "session" (
    "id" UUID NOT NULL,
    "user_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "token_hash" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(6) NOT NULL,
    "ended_at" TIMESTAMPTZ(6),

    CONSTRAINT "session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "owner_invitation" (
    "id" UUID NOT NULL,
    "token_hash" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(6) NOT NULL,
    "used_at" TIMESTAMPTZ(6),

    CONSTRAINT "owner_invitation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "idempotent_request" (
    "key" TEXT NOT NULL,
    "user_id" UUID NOT NULL,
    "method" TEXT NOT NULL,
    "path" TEXT NOT NULL,
    "body_hash" TEXT NOT NULL,
    "status" INTEGER NOT NULL,
    "body" JSONB NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "idempotent_request_pkey" PRIMARY KEY ("key")
);

-- CreateTable
CREATE TABLE "journal_entry" (
    "id" BIGSERIAL NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID,
    "user_name" TEXT NOT NULL,
    "from_address" TEXT,
    "action" TEXT NOT NULL,
    "subject_kind" TEXT NOT NULL,
    "subject_id" TEXT NOT NULL,
    "detail" JSONB NOT NULL DEFAULT '{}',

    CONSTRAINT "journal_entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "supplier" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "address_lines" TEXT[],
    "email" TEXT,
    "phone" TEXT,
    "note" TEXT,
    "active" BOOLEAN NOT NULL DEFAULT true,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "supplier_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "customer" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "address_lines" TEXT[],
    "email" TEXT,
    "phone" TEXT,
    "price_list" TEXT NOT NULL DEFAULT 'trade',
    "minimum_life_days" INTEGER NOT NULL DEFAULT 0,
    "note" TEXT,
    "active" BOOLEAN NOT NULL DEFAULT true,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "customer_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "place" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "tag" TEXT NOT NULL,
    "min_temp_c" DECIMAL(6,2),
    "max_temp_c" DECIMAL(6,2),
    "max_humidity_percent" DECIMAL(5,2),
    "reading_every_hours" INTEGER,
    "active" BOOLEAN NOT NULL DEFAULT true,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "place_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "item" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "perishable" BOOLEAN NOT NULL DEFAULT false,
    "caps_date" BOOLEAN NOT NULL DEFAULT true,
    "infusion_only" BOOLEAN NOT NULL DEFAULT false,
    "processing_aid" BOOLEAN NOT NULL DEFAULT false,
    "gtin" TEXT,
    "storage_conditions" TEXT,
    "nominal_mass_g" DECIMAL(14,3),
    "vat_class" TEXT,
    "replacement_price" DECIMAL(14,4),
    "settings" JSONB NOT NULL DEFAULT '{}',
    "note" TEXT,
    "active" BOOLEAN NOT NULL DEFAULT true,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "item_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "specification" (
    "id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "supplier_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "state" TEXT NOT NULL,
    "label_names" JSONB NOT NULL,
    "ingredients" JSONB NOT NULL,
    "composition" JSONB NOT NULL,
    "nutrition" JSONB NOT NULL,
    "statements" JSONB NOT NULL DEFAULT '{}',
    "document" TEXT,
    "approved_by_id" UUID,
    "approved_at" TIMESTAMPTZ(6),
    "withdrawn_at" TIMESTAMPTZ(6),
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "specification_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "specification_allergen" (
    "specification_id" UUID NOT NULL,
    "allergen" TEXT NOT NULL,
    "presence" TEXT NOT NULL,

    CONSTRAINT "specification_allergen_pkey" PRIMARY KEY ("specification_id","allergen")
);

-- CreateTable
CREATE TABLE "recipe" (
    "id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "recipe_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "recipe_version" (
    "id" UUID NOT NULL,
    "recipe_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "yield_mass_g" DECIMAL(14,3),
    "yield_pieces" INTEGER,
    "expected_losses" JSONB NOT NULL DEFAULT '[]',
    "shelf_life_days" INTEGER,
    "shelf_life_basis" TEXT,
    "shelf_life_document" TEXT,
    "date_kind" TEXT NOT NULL DEFAULT 'best_before',
    "life_after_thaw_days" INTEGER,
    "steps" JSONB NOT NULL DEFAULT '[]',
    "labour_minutes" DECIMAL(10,2),
    "labour_role" TEXT,
    "mould_design_id" UUID,
    "note" TEXT,
    "frozen_at" TIMESTAMPTZ(6),
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "recipe_version_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "recipe_line" (
    "id" UUID NOT NULL,
    "version_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "component_id" UUID NOT NULL,
    "quantity" DECIMAL(14,3) NOT NULL,
    "role" TEXT NOT NULL,
    "note" TEXT,

    CONSTRAINT "recipe_line_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "delivery" (
    "id" UUID NOT NULL,
    "supplier_id" UUID NOT NULL,
    "reference" TEXT,
    "received_on" DATE NOT NULL,
    "received_at" TIMESTAMPTZ(6) NOT NULL,
    "user_id" UUID NOT NULL,
    "note" TEXT,

    CONSTRAINT "delivery_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "delivery_line" (
    "id" UUID NOT NULL,
    "delivery_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "item_id" UUID NOT NULL,
    "supplier_lot_code" TEXT NOT NULL,
    "best_before" DATE,
    "use_by" DATE,
    "quantity" DECIMAL(14,3) NOT NULL,
    "price" DECIMAL(14,4) NOT NULL,
    "temp_c" DECIMAL(6,2),
    "accepted" BOOLEAN NOT NULL,
    "refusal_reason" TEXT,

    CONSTRAINT "delivery_line_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "lot" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "item_id" UUID NOT NULL,
    "unit" TEXT NOT NULL,
    "specification_id" UUID,
    "recipe_version_id" UUID,
    "delivery_line_id" UUID,
    "batch_id" UUID,
    "output_role" TEXT,
    "made_quantity" DECIMAL(14,3) NOT NULL,
    "made_mass_g" DECIMAL(14,3) NOT NULL,
    "made_cost" DECIMAL(14,4) NOT NULL,
    "on_hand_quantity" DECIMAL(14,3) NOT NULL DEFAULT 0,
    "on_hand_mass_g" DECIMAL(14,3) NOT NULL DEFAULT 0,
    "on_hand_cost" DECIMAL(14,4) NOT NULL DEFAULT 0,
    "best_before" DATE,
    "use_by" DATE,
    "date_reasons" JSONB NOT NULL DEFAULT '[]',
    "made_on" DATE NOT NULL,
    "place_id" UUID,
    "refused" BOOLEAN NOT NULL DEFAULT false,
    "frozen_on" DATE,
    "thawed_on" DATE,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID NOT NULL,

    CONSTRAINT "lot_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "movement" (
    "id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "quantity" DECIMAL(14,3) NOT NULL,
    "mass_g" DECIMAL(14,3) NOT NULL,
    "cost" DECIMAL(14,4) NOT NULL,
    "kind" TEXT NOT NULL,
    "delivery_line_id" UUID,
    "batch_id" UUID,
    "draw_id" UUID,
    "dispatch_line_id" UUID,
    "event_id" UUID,
    "reverses_id" UUID,
    "reason" TEXT,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID NOT NULL,

    CONSTRAINT "movement_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "hold" (
    "id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "cause_id" UUID,
    "placed_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "placed_by_id" UUID NOT NULL,
    "released_at" TIMESTAMPTZ(6),
    "released_by_id" UUID,
    "release_reason" TEXT,

    CONSTRAINT "hold_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "batch" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "recipe_version_id" UUID,
    "tank_id" UUID,
    "state" TEXT NOT NULL DEFAULT 'open',
    "operator_id" UUID NOT NULL,
    "place_id" UUID,
    "plan" JSONB NOT NULL DEFAULT '{}',
    "labour_minutes" DECIMAL(10,2),
    "opened_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "ended_at" TIMESTAMPTZ(6),
    "end_reason" TEXT,
    "imbalance_reason" TEXT,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "batch_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "draw" (
    "id" UUID NOT NULL,
    "batch_id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "role" TEXT NOT NULL,
    "quantity" DECIMAL(14,3) NOT NULL,
    "mass_g" DECIMAL(14,3) NOT NULL,
    "cost" DECIMAL(14,4) NOT NULL,
    "reverses_id" UUID,
    "reason" TEXT,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID NOT NULL,

    CONSTRAINT "draw_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "batch_loss" (
    "id" UUID NOT NULL,
    "batch_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "mass_g" DECIMAL(14,3) NOT NULL,
    "lot_id" UUID,
    "reverses_id" UUID,
    "note" TEXT,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID NOT NULL,

    CONSTRAINT "batch_loss_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "mould_design" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "shape" TEXT NOT NULL,
    "rows" INTEGER NOT NULL,
    "columns" INTEGER NOT NULL,
    "cavity_volume_ml" DECIMAL(8,4),
    "piece_mass_g" DECIMAL(14,3),
    "geometry" JSONB NOT NULL DEFAULT '{}',
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "mould_design_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "mould" (
    "id" UUID NOT NULL,
    "tag" TEXT NOT NULL,
    "design_id" UUID NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'sound',
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "mould_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "mould_use" (
    "id" UUID NOT NULL,
    "batch_id" UUID NOT NULL,
    "mould_id" UUID NOT NULL,
    "cavities_filled" INTEGER NOT NULL,
    "reject_cavities" INTEGER[],
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID NOT NULL,

    CONSTRAINT "mould_use_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "mould_inspection" (
    "id" UUID NOT NULL,
    "mould_id" UUID NOT NULL,
    "result" TEXT NOT NULL,
    "note" TEXT,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID NOT NULL,

    CONSTRAINT "mould_inspection_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "tank" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "tag" TEXT NOT NULL,
    "item_id" UUID NOT NULL,
    "capacity_g" DECIMAL(14,3) NOT NULL,
    "current_lot_id" UUID,
    "active" BOOLEAN NOT NULL DEFAULT true,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "tank_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "tank_emptying" (
    "id" UUID NOT NULL,
    "tank_id" UUID NOT NULL,
    "lot_id" UUID,
    "heel_g" DECIMAL(14,3) NOT NULL,
    "outcome" TEXT NOT NULL,
    "cleaned" BOOLEAN NOT NULL,
    "note" TEXT,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID NOT NULL,

    CONSTRAINT "tank_emptying_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "reading" (
    "id" UUID NOT NULL,
    "measure" TEXT NOT NULL,
    "value" DECIMAL(14,4) NOT NULL,
    "low" DECIMAL(14,4),
    "high" DECIMAL(14,4),
    "verdict" TEXT NOT NULL,
    "batch_id" UUID,
    "place_id" UUID,
    "lot_id" UUID,
    "delivery_line_id" UUID,
    "step" TEXT,
    "instrument" TEXT,
    "corrective_action" TEXT,
    "reverses_id" UUID,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID NOT NULL,

    CONSTRAINT "reading_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "cleaning_record" (
    "id" UUID NOT NULL,
    "place_id" UUID,
    "tank_id" UUID,
    "what" TEXT NOT NULL,
    "note" TEXT,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID NOT NULL,

    CONSTRAINT "cleaning_record_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dispatch" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "customer_id" UUID,
    "sent_on" DATE NOT NULL,
    "note" TEXT,
    "order_id" UUID,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID NOT NULL,

    CONSTRAINT "dispatch_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dispatch_line" (
    "id" UUID NOT NULL,
    "dispatch_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "lot_id" UUID NOT NULL,
    "quantity" DECIMAL(14,3) NOT NULL,
    "mass_g" DECIMAL(14,3) NOT NULL,
    "cost" DECIMAL(14,4) NOT NULL,

    CONSTRAINT "dispatch_line_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "label_run" (
    "id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "form" TEXT NOT NULL,
    "market" TEXT NOT NULL,
    "languages" TEXT[],
    "copies" INTEGER NOT NULL,
    "content" JSONB NOT NULL,
    "pdf" BYTEA NOT NULL,
    "pdf_sha256" TEXT NOT NULL,
    "accepted" JSONB NOT NULL DEFAULT '[]',
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID NOT NULL,

    CONSTRAINT "label_run_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "complaint" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "code_as_read" TEXT NOT NULL,
    "lot_id" UUID,
    "kind" TEXT NOT NULL,
    "what" TEXT NOT NULL,
    "customer" TEXT,
    "received_on" DATE NOT NULL,
    "outcome" TEXT,
    "closed_at" TIMESTAMPTZ(6),
    "version" INTEGER NOT NULL DEFAULT 1,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID NOT NULL,

    CONSTRAINT "complaint_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "recall_case" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "mode" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "roots" JSONB NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'open',
    "opened_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "opened_by_id" UUID NOT NULL,
    "frozen_at" TIMESTAMPTZ(6),
    "frozen_scope" JSONB,
    "closed_at" TIMESTAMPTZ(6),
    "closed_by_id" UUID,
    "close_report" JSONB,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "recall_case_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "recall_action" (
    "id" UUID NOT NULL,
    "case_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "detail" JSONB NOT NULL DEFAULT '{}',
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "user_id" UUID NOT NULL,

    CONSTRAINT "recall_action_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "labour_rate_role_from_day_key" ON "labour_rate"("role", "from_day");

-- CreateIndex
CREATE UNIQUE INDEX "vat_rate_product_class_from_day_key" ON "vat_rate"("product_class", "from_day");

-- CreateIndex
CREATE UNIQUE INDEX "app_user_name_key" ON "app_user"("name");

-- CreateIndex
CREATE UNIQUE INDEX "session_token_hash_key" ON "session"("token_hash");

-- CreateIndex
CREATE INDEX "session_user_id_idx" ON "session"("user_id");

-- CreateIndex
CREATE UNIQUE INDEX "owner_invitation_token_hash_key" ON "owner_invitation"("token_hash");

-- CreateIndex
CREATE INDEX "journal_entry_subject_kind_subject_id_idx" ON "journal_entry"("subject_kind", "subject_id");

-- CreateIndex
CREATE INDEX "journal_entry_at_idx" ON "journal_entry"("at");

-- CreateIndex
CREATE UNIQUE INDEX "supplier_name_key" ON "supplier"("name");

-- CreateIndex
CREATE UNIQUE INDEX "customer_name_key" ON "customer"("name");

-- CreateIndex
CREATE UNIQUE INDEX "place_name_key" ON "place"("name");

-- CreateIndex
CREATE UNIQUE INDEX "place_tag_key" ON "place"("tag");

-- CreateIndex
CREATE UNIQUE INDEX "item_name_key" ON "item"("name");

-- CreateIndex
CREATE UNIQUE INDEX "item_gtin_key" ON "item"("gtin");

-- CreateIndex
CREATE UNIQUE INDEX "specification_item_id_supplier_id_number_key" ON "specification"("item_id", "supplier_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "recipe_item_id_key" ON "recipe"("item_id");

-- CreateIndex
CREATE UNIQUE INDEX "recipe_version_recipe_id_number_key" ON "recipe_version"("recipe_id", "number");

-- CreateIndex
CREATE INDEX "recipe_line_component_id_idx" ON "recipe_line"("component_id");

-- CreateIndex
CREATE UNIQUE INDEX "recipe_line_version_id_position_key" ON "recipe_line"("version_id", "position");

-- CreateIndex
CREATE INDEX "delivery_supplier_id_received_on_idx" ON "delivery"("supplier_id", "received_on");

-- CreateIndex
CREATE INDEX "delivery_line_item_id_supplier_lot_code_idx" ON "delivery_line"("item_id", "supplier_lot_code");

-- CreateIndex
CREATE UNIQUE INDEX "delivery_line_delivery_id_position_key" ON "delivery_line"("delivery_id", "position");

-- CreateIndex
CREATE UNIQUE INDEX "lot_code_key" ON "lot"("code");

-- CreateIndex
CREATE UNIQUE INDEX "lot_delivery_line_id_key" ON "lot"("delivery_line_id");

-- CreateIndex
CREATE INDEX "lot_item_id_use_by_best_before_idx" ON "lot"("item_id", "use_by", "best_before");

-- CreateIndex
CREATE INDEX "lot_batch_id_idx" ON "lot"("batch_id");

-- CreateIndex
CREATE INDEX "lot_specification_id_idx" ON "lot"("specification_id");

-- CreateIndex
CREATE INDEX "lot_recipe_version_id_idx" ON "lot"("recipe_version_id");

-- CreateIndex
CREATE INDEX "lot_place_id_idx" ON "lot"("place_id");

-- CreateIndex
CREATE UNIQUE INDEX "movement_draw_id_key" ON "movement"("draw_id");

-- CreateIndex
CREATE UNIQUE INDEX "movement_reverses_id_key" ON "movement"("reverses_id");

-- CreateIndex
CREATE INDEX "movement_lot_id_at_idx" ON "movement"("lot_id", "at");

-- CreateIndex
CREATE INDEX "movement_batch_id_idx" ON "movement"("batch_id");

-- CreateIndex
CREATE INDEX "movement_dispatch_line_id_idx" ON "movement"("dispatch_line_id");

-- CreateIndex
CREATE INDEX "movement_event_id_idx" ON "movement"("event_id");

-- CreateIndex
CREATE INDEX "hold_lot_id_idx" ON "hold"("lot_id");

-- CreateIndex
CREATE INDEX "hold_cause_id_idx" ON "hold"("cause_id");

-- CreateIndex
CREATE UNIQUE INDEX "batch_code_key" ON "batch"("code");

-- CreateIndex
CREATE INDEX "batch_recipe_version_id_idx" ON "batch"("recipe_version_id");

-- CreateIndex
CREATE INDEX "batch_tank_id_ended_at_idx" ON "batch"("tank_id", "ended_at");

-- CreateIndex
CREATE INDEX "batch_state_idx" ON "batch"("state");

-- CreateIndex
CREATE UNIQUE INDEX "draw_reverses_id_key" ON "draw"("reverses_id");

-- CreateIndex
CREATE INDEX "draw_batch_id_idx" ON "draw"("batch_id");

-- CreateIndex
CREATE INDEX "draw_lot_id_idx" ON "draw"("lot_id");

-- CreateIndex
CREATE UNIQUE INDEX "batch_loss_reverses_id_key" ON "batch_loss"("reverses_id");

-- CreateIndex
CREATE INDEX "batch_loss_batch_id_idx" ON "batch_loss"("batch_id");

-- CreateIndex
CREATE UNIQUE INDEX "mould_design_name_key" ON "mould_design"("name");

-- CreateIndex
CREATE UNIQUE INDEX "mould_tag_key" ON "mould"("tag");

-- CreateIndex
CREATE INDEX "mould_design_id_idx" ON "mould"("design_id");

-- CreateIndex
CREATE INDEX "mould_use_mould_id_at_idx" ON "mould_use"("mould_id", "at");

-- CreateIndex
CREATE INDEX "mould_use_batch_id_idx" ON "mould_use"("batch_id");

-- CreateIndex
CREATE INDEX "mould_inspection_mould_id_at_idx" ON "mould_inspection"("mould_id", "at");

-- CreateIndex
CREATE UNIQUE INDEX "tank_name_key" ON "tank"("name");

-- CreateIndex
CREATE UNIQUE INDEX "tank_tag_key" ON "tank"("tag");

-- CreateIndex
CREATE UNIQUE INDEX "tank_current_lot_id_key" ON "tank"("current_lot_id");

-- CreateIndex
CREATE INDEX "tank_emptying_tank_id_at_idx" ON "tank_emptying"("tank_id", "at");

-- CreateIndex
CREATE UNIQUE INDEX "reading_reverses_id_key" ON "reading"("reverses_id");

-- CreateIndex
CREATE INDEX "reading_place_id_at_idx" ON "reading"("place_id", "at");

-- CreateIndex
CREATE INDEX "reading_batch_id_idx" ON "reading"("batch_id");

-- CreateIndex
CREATE INDEX "reading_lot_id_idx" ON "reading"("lot_id");

-- CreateIndex
CREATE INDEX "reading_at_idx" ON "reading"("at");

-- CreateIndex
CREATE INDEX "cleaning_record_at_idx" ON "cleaning_record"("at");

-- CreateIndex
CREATE UNIQUE INDEX "dispatch_code_key" ON "dispatch"("code");

-- CreateIndex
CREATE INDEX "dispatch_customer_id_sent_on_idx" ON "dispatch"("customer_id", "sent_on");

-- CreateIndex
CREATE INDEX "dispatch_sent_on_idx" ON "dispatch"("sent_on");

-- CreateIndex
CREATE INDEX "dispatch_line_lot_id_idx" ON "dispatch_line"("lot_id");

-- CreateIndex
CREATE UNIQUE INDEX "dispatch_line_dispatch_id_position_key" ON "dispatch_line"("dispatch_id", "position");

-- CreateIndex
CREATE INDEX "label_run_lot_id_at_idx" ON "label_run"("lot_id", "at");

-- CreateIndex
CREATE UNIQUE INDEX "complaint_code_key" ON "complaint"("code");

-- CreateIndex
CREATE INDEX "complaint_lot_id_idx" ON "complaint"("lot_id");

-- CreateIndex
CREATE UNIQUE INDEX "recall_case_code_key" ON "recall_case"("code");

-- CreateIndex
CREATE INDEX "recall_action_case_id_at_idx" ON "recall_action"("case_id", "at");

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_user_id_fkey" FOREIGN KEY ("user_id") REFERENCES "app_user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "specification" ADD CONSTRAINT "specification_item_id_fkey" FOREIGN KEY ("item_id") REFERENCES "item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "specification" ADD CONSTRAINT "specification_supplier_id_fkey" FOREIGN KEY ("supplier_id") REFERENCES "supplier"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "specification_allergen" ADD CONSTRAINT "specification_allergen_specification_id_fkey" FOREIGN KEY ("specification_id") REFERENCES "specification"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "recipe" ADD CONSTRAINT "recipe_item_id_fkey" FOREIGN KEY ("item_id") REFERENCES "item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "recipe_version" ADD CONSTRAINT "recipe_version_recipe_id_fkey" FOREIGN KEY ("recipe_id") REFERENCES "recipe"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "recipe_version" ADD CONSTRAINT "recipe_version_mould_design_id_fkey" FOREIGN KEY ("mould_design_id") REFERENCES "mould_design"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "recipe_line" ADD CONSTRAINT "recipe_line_version_id_fkey" FOREIGN KEY ("version_id") REFERENCES "recipe_version"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "recipe_line" ADD CONSTRAINT "recipe_line_component_id_fkey" FOREIGN KEY ("component_id") REFERENCES "item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "delivery" ADD CONSTRAINT "delivery_supplier_id_fkey" FOREIGN KEY ("supplier_id") REFERENCES "supplier"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "delivery_line" ADD CONSTRAINT "delivery_line_delivery_id_fkey" FOREIGN KEY ("delivery_id") REFERENCES "delivery"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "delivery_line" ADD CONSTRAINT "delivery_line_item_id_fkey" FOREIGN KEY ("item_id") REFERENCES "item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_item_id_fkey" FOREIGN KEY ("item_id") REFERENCES "item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_specification_id_fkey" FOREIGN KEY ("specification_id") REFERENCES "specification"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_recipe_version_id_fkey" FOREIGN KEY ("recipe_version_id") REFERENCES "recipe_version"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_delivery_line_id_fkey" FOREIGN KEY ("delivery_line_id") REFERENCES "delivery_line"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_batch_id_fkey" FOREIGN KEY ("batch_id") REFERENCES "batch"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_place_id_fkey" FOREIGN KEY ("place_id") REFERENCES "place"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "movement" ADD CONSTRAINT "movement_lot_id_fkey" FOREIGN KEY ("lot_id") REFERENCES "lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "movement" ADD CONSTRAINT "movement_reverses_id_fkey" FOREIGN KEY ("reverses_id") REFERENCES "movement"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hold" ADD CONSTRAINT "hold_lot_id_fkey" FOREIGN KEY ("lot_id") REFERENCES "lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "batch" ADD CONSTRAINT "batch_recipe_version_id_fkey" FOREIGN KEY ("recipe_version_id") REFERENCES "recipe_version"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "batch" ADD CONSTRAINT "batch_tank_id_fkey" FOREIGN KEY ("tank_id") REFERENCES "tank"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draw" ADD CONSTRAINT "draw_batch_id_fkey" FOREIGN KEY ("batch_id") REFERENCES "batch"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draw" ADD CONSTRAINT "draw_lot_id_fkey" FOREIGN KEY ("lot_id") REFERENCES "lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draw" ADD CONSTRAINT "draw_reverses_id_fkey" FOREIGN KEY ("reverses_id") REFERENCES "draw"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "batch_loss" ADD CONSTRAINT "batch_loss_batch_id_fkey" FOREIGN KEY ("batch_id") REFERENCES "batch"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "batch_loss" ADD CONSTRAINT "batch_loss_lot_id_fkey" FOREIGN KEY ("lot_id") REFERENCES "lot"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "batch_loss" ADD CONSTRAINT "batch_loss_reverses_id_fkey" FOREIGN KEY ("reverses_id") REFERENCES "batch_loss"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "mould" ADD CONSTRAINT "mould_design_id_fkey" FOREIGN KEY ("design_id") REFERENCES "mould_design"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "mould_use" ADD CONSTRAINT "mould_use_batch_id_fkey" FOREIGN KEY ("batch_id") REFERENCES "batch"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "mould_use" ADD CONSTRAINT "mould_use_mould_id_fkey" FOREIGN KEY ("mould_id") REFERENCES "mould"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "mould_inspection" ADD CONSTRAINT "mould_inspection_mould_id_fkey" FOREIGN KEY ("mould_id") REFERENCES "mould"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tank" ADD CONSTRAINT "tank_item_id_fkey" FOREIGN KEY ("item_id") REFERENCES "item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tank_emptying" ADD CONSTRAINT "tank_emptying_tank_id_fkey" FOREIGN KEY ("tank_id") REFERENCES "tank"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "reading" ADD CONSTRAINT "reading_batch_id_fkey" FOREIGN KEY ("batch_id") REFERENCES "batch"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "reading" ADD CONSTRAINT "reading_place_id_fkey" FOREIGN KEY ("place_id") REFERENCES "place"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "reading" ADD CONSTRAINT "reading_lot_id_fkey" FOREIGN KEY ("lot_id") REFERENCES "lot"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "dispatch" ADD CONSTRAINT "dispatch_customer_id_fkey" FOREIGN KEY ("customer_id") REFERENCES "customer"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "dispatch_line" ADD CONSTRAINT "dispatch_line_dispatch_id_fkey" FOREIGN KEY ("dispatch_id") REFERENCES "dispatch"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "dispatch_line" ADD CONSTRAINT "dispatch_line_lot_id_fkey" FOREIGN KEY ("lot_id") REFERENCES "lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "label_run" ADD CONSTRAINT "label_run_lot_id_fkey" FOREIGN KEY ("lot_id") REFERENCES "lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "complaint" ADD CONSTRAINT "complaint_lot_id_fkey" FOREIGN KEY ("lot_id") REFERENCES "lot"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "recall_action" ADD CONSTRAINT "recall_action_case_id_fkey" FOREIGN KEY ("case_id") REFERENCES "recall_case"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
