"""Recipes, and logs whose entries are only ever added."""

import sqlalchemy as sa
from alembic import op

revision = "recipes_and_logs"
down_revision = "plans_and_conversations"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the three tables."""
    op.create_table(
        "recipes",
        sa.Column("id", sa.String(64), primary_key=True),
        sa.Column("document", sa.JSON(), nullable=False),
        sa.Column("kept_at", sa.DateTime(timezone=True), nullable=False, index=True),
    )
    op.create_table(
        "logs",
        sa.Column("id", sa.String(64), primary_key=True),
        sa.Column("document", sa.JSON(), nullable=False),
        sa.Column("opened_at", sa.DateTime(timezone=True), nullable=False, index=True),
    )
    op.create_table(
        "log_entries",
        sa.Column("log_id", sa.String(64), sa.ForeignKey("logs.id"), primary_key=True),
        sa.Column("number", sa.Integer(), primary_key=True, autoincrement=False),
        sa.Column("document", sa.JSON(), nullable=False),
    )


def downgrade() -> None:
    """Drop them."""
    op.drop_table("log_entries")
    op.drop_table("logs")
    op.drop_table("recipes")
