"""A shop of devices that edit, lose their network, crash and are restored, in one process."""
