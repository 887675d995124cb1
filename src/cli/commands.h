#pragma once

#include "cli/command.h"
#include "store/stored_entry.h"

/// Every command, in the order in which help shows them: each stands in the file of its first word, `command_soak.cpp`.
namespace baitwright {

CommandSpec command_mix();
CommandSpec command_water();
CommandSpec command_soak();
CommandSpec command_dose();
CommandSpec command_drop();
CommandSpec command_dry();
CommandSpec command_cost();
CommandSpec command_compare();
CommandSpec command_plan();
CommandSpec command_advise();
CommandSpec command_card();
CommandSpec command_page();
CommandSpec command_shop();
CommandSpec command_swap();
CommandSpec command_blend();
CommandSpec command_find();
CommandSpec command_ingredient_list();
CommandSpec command_ingredient_show();
CommandSpec command_ingredient_add();
CommandSpec command_ingredient_measure();
CommandSpec command_ingredient_import();
CommandSpec command_ingredient_export();
CommandSpec command_recipe_list();
CommandSpec command_recipe_show();
CommandSpec command_recipe_check();
CommandSpec command_recipe_add();
CommandSpec command_strategy_list();
CommandSpec command_strategy_show();
CommandSpec command_strategy_check();
CommandSpec command_strategy_add();
CommandSpec command_venue_list();
CommandSpec command_venue_show();
CommandSpec command_venue_check();
CommandSpec command_venue_add();
CommandSpec command_blend_list();
CommandSpec command_blend_show();
CommandSpec command_blend_check();
CommandSpec command_blend_add();
/// `copy`, `rename`, `remove`, `restore` and `edit` of a kind.
std::vector<CommandSpec> commands_of_own_entries(EntryKind kind);
CommandSpec command_usual();
CommandSpec command_stock();
CommandSpec command_stock_history();
CommandSpec command_stock_buy();
CommandSpec command_stock_keep();
CommandSpec command_stock_count();
CommandSpec command_stock_use();
CommandSpec command_stock_waste();
CommandSpec command_stock_undo();
CommandSpec command_stock_session();
CommandSpec command_log_add();
CommandSpec command_log_blank();
CommandSpec command_log_catch();
CommandSpec command_log_mix();
CommandSpec command_log_soak();
CommandSpec command_log_weigh();
CommandSpec command_log_drop();
CommandSpec command_log_bag();
CommandSpec command_log_list();
CommandSpec command_log_show();
CommandSpec command_log_edit();
CommandSpec command_log_undo();
CommandSpec command_log_notes();
CommandSpec command_learn();
CommandSpec command_learn_undo();
CommandSpec command_paid();
CommandSpec command_price();
CommandSpec command_price_list();
CommandSpec command_price_history();
CommandSpec command_price_convert();
CommandSpec command_backup();
CommandSpec command_restore();
CommandSpec command_merge();
CommandSpec command_doctor();
CommandSpec command_export();
CommandSpec command_import();

}  // namespace baitwright
