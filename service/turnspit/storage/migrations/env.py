"""Runs the migrations on the connection that `open_store` hands over."""

from alembic import context

from turnspit.storage.tables import Base

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=Base.metadata,
    render_as_batch=True,  # SQLite cannot alter a column in place
)
with context.begin_transaction():
    context.run_migrations()
