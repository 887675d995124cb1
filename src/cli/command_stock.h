#pragma once

#include "cli/command.h"

namespace baitwright {

/// What is in the shed, and what happened to one thing.
CommandSpec command_stock();
CommandSpec command_stock_history();

/// Entries of the ledger.
CommandSpec command_stock_buy();
CommandSpec command_stock_keep();
CommandSpec command_stock_count();
CommandSpec command_stock_use();
CommandSpec command_stock_waste();
CommandSpec command_stock_undo();
CommandSpec command_stock_session();

}  // namespace baitwright
