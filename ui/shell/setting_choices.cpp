#include "ui/shell/setting_choices.h"

#include <QCoreApplication>
#include <set>

#include "ui/shell/settings.h"
#include "ui/shell/settings_dialog.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

struct Choices {
  Q_DECLARE_TR_FUNCTIONS(Choices)
};

/// Sooner than the house's, in minutes.
constexpr int usualMinutes[] = {1, 2, 3, 5, 10, 15, 30, 60};
constexpr qsizetype mostName = 48;  // letters of a set's name

QString unitWords(UnitSystem units) {
  switch (units) {
    case UnitSystem::metric:
      return Choices::tr("Metric: cm and kg");
    case UnitSystem::household:
      return Choices::tr("Household: feet and pounds");
    case UnitSystem::none:
      break;
  }
  return Choices::tr("None: every line says its unit");
}

QString houseWords(UnitSystem units) {
  return units == UnitSystem::metric ? Choices::tr("metric") : Choices::tr("household");
}

QString coverWords(int minutes) {
  return minutes == 1 ? Choices::tr("after 1 minute") : Choices::tr("after %1 minutes").arg(minutes);
}

}  // namespace

SettingChoices textSizeChoices(const SettingsShown& now) {
  std::set<int> sizes{now.textSize};
  for (int percent = leastTextSize; percent <= mostTextSize; percent += textStep) sizes.insert(percent);
  SettingChoices choices;
  for (const int percent : sizes)
    choices.push_back({QString::number(percent), percent == 100 ? Choices::tr("100 %: as the desktop")
                                                                : QStringLiteral("%1 %").arg(percent)});
  return choices;
}

SettingChoices colourChoices() {
  const auto choice = [](Colours colours, const QString& words) {
    return SettingChoice{fromCore(nameOf(colours)), words};
  };
  return {choice(Colours::desktop, Choices::tr("As the desktop")),
          choice(Colours::light, Choices::tr("Light")), choice(Colours::dark, Choices::tr("Dark")),
          choice(Colours::contrastLight, Choices::tr("High contrast, light")),
          choice(Colours::contrastDark, Choices::tr("High contrast, dark"))};
}

SettingChoices unitChoices(const SettingsShown& now) {
  const bool houseSays = now.houseUnits && now.houseUnits != UnitSystem::none;
  SettingChoices choices{{QStringLiteral("none"),
                          houseSays
                              ? Choices::tr("As the house rules say: %1").arg(houseWords(*now.houseUnits))
                              : unitWords(UnitSystem::none)}};
  choices.push_back({QStringLiteral("metric"), unitWords(UnitSystem::metric)});
  choices.push_back({QStringLiteral("household"), unitWords(UnitSystem::household)});
  return choices;
}

SettingChoices rulesChoices(const SettingsShown& now) {
  SettingChoices choices{{QStringLiteral("exact"), Choices::tr("Exact: as shipped")},
                         {QStringLiteral("classroom"), Choices::tr("Classroom: as often taught")}};
  if (!now.ownRules.isEmpty()) choices.push_back({QStringLiteral("own"), shortened(now.ownRules, mostName)});
  return choices;
}

SettingChoices coverChoices(const SettingsShown& now) {
  std::set<int> minutes;
  if (now.coverMinutes && *now.coverMinutes < now.houseMinutes) minutes.insert(*now.coverMinutes);
  for (const int usual : usualMinutes)
    if (usual < now.houseMinutes) minutes.insert(usual);
  SettingChoices choices{
      {QStringLiteral("house"), Choices::tr("As the house rules say: %1").arg(coverWords(now.houseMinutes))}};
  for (const int one : minutes) choices.push_back({QString::number(one), coverWords(one)});
  return choices;
}

SettingChoices paperChoices() {
  return {{nameOf(PaperSize::a4), Choices::tr("A4")}, {nameOf(PaperSize::letter), Choices::tr("Letter")}};
}

}  // namespace wardchalk::ui
