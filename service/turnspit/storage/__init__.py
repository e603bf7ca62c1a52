"""What is kept between two requests: plans and conversations, in SQLite or any database SQLAlchemy speaks to."""

from turnspit.storage.place import default_url
from turnspit.storage.store import KeptConversation, KeptPlan, Store, open_store

__all__ = ["KeptConversation", "KeptPlan", "Store", "default_url", "open_store"]
