#pragma once

#include <QString>
#include <vector>

namespace wardchalk::ui {

struct SettingsShown;

/// One of the words that a setting may be, with its name for files and signals.
struct SettingChoice {
  QString id;
  QString words;
  friend bool operator==(const SettingChoice&, const SettingChoice&) = default;
};
using SettingChoices = std::vector<SettingChoice>;

// What each setting offers now. The one that holds is always among them, also where a file says something
// that is not usually offered.

[[nodiscard]] SettingChoices textSizeChoices(const SettingsShown& now);
[[nodiscard]] SettingChoices colourChoices();
[[nodiscard]] SettingChoices unitChoices(const SettingsShown& now);
[[nodiscard]] SettingChoices rulesChoices(const SettingsShown& now);
[[nodiscard]] SettingChoices coverChoices(const SettingsShown& now);
[[nodiscard]] SettingChoices paperChoices();

}  // namespace wardchalk::ui
