"""Runs the migrations on the connection that the shop's database gives."""

from alembic import context

from longpoint.shop.tables import Table

connection = context.config.attributes["connection"]
context.configure(connection=connection, target_metadata=Table.metadata, render_as_batch=True)
with context.begin_transaction():
    context.run_migrations()
