"""The first tables: plans and conversations."""

import sqlalchemy as sa
from alembic import op

revision = "plans_and_conversations"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make both tables."""
    op.create_table(
        "plans",
        sa.Column("id", sa.String(64), primary_key=True),
        sa.Column("document", sa.JSON(), nullable=False),
        sa.Column("kept_at", sa.DateTime(timezone=True), nullable=False, index=True),
        sa.Column("serve_at", sa.DateTime(timezone=True), nullable=False, index=True),
        sa.Column("shown_at", sa.DateTime(timezone=True), nullable=True),
    )
    op.create_table(
        "conversations",
        sa.Column("id", sa.String(64), primary_key=True),
        sa.Column("document", sa.JSON(), nullable=False),
        sa.Column("touched_at", sa.DateTime(timezone=True), nullable=False, index=True),
    )


def downgrade() -> None:
    """Drop both."""
    op.drop_table("conversations")
    op.drop_table("plans")
