#include "ui/shell/settings.h"

#include <QStandardPaths>
#include <algorithm>
#include <array>

namespace wardchalk::ui {

namespace {

constexpr std::array systemNames = {"none", "metric", "household"};

QString usualFile() {
  return QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) +
         QStringLiteral("/wardchalk/wardchalk.ini");
}

}  // namespace

Settings::Settings(const QString& file) : store_(file.isEmpty() ? usualFile() : file, QSettings::IniFormat) {}

QByteArray Settings::geometry() const { return store_.value(QStringLiteral("geometry")).toByteArray(); }
void Settings::setGeometry(const QByteArray& geometry) {
  store_.setValue(QStringLiteral("geometry"), geometry);
}

UnitSystem Settings::unitSystem() const {
  const QString name = store_.value(QStringLiteral("unit_system")).toString();
  for (std::size_t i = 0; i < systemNames.size(); ++i)
    if (name == QLatin1String(systemNames[i])) return static_cast<UnitSystem>(i);
  return UnitSystem::none;
}

void Settings::setUnitSystem(UnitSystem system) {
  store_.setValue(QStringLiteral("unit_system"),
                  QString::fromLatin1(systemNames[static_cast<std::size_t>(system)]));
}

int Settings::zoom() const {
  bool whole = false;
  const int percent = store_.value(QStringLiteral("zoom"), 100).toInt(&whole);
  return whole ? std::clamp(percent, leastZoom, mostZoom) : 100;
}

void Settings::setZoom(int percent) { store_.setValue(QStringLiteral("zoom"), percent); }

PaperSize Settings::paper() const {
  return paperSizeNamed(store_.value(QStringLiteral("paper")).toString()).value_or(PaperSize::a4);
}

void Settings::setPaper(PaperSize size) { store_.setValue(QStringLiteral("paper"), nameOf(size)); }

QString Settings::referenceList() const { return store_.value(QStringLiteral("reference_list")).toString(); }

void Settings::setReferenceList(const QString& file) {
  store_.setValue(QStringLiteral("reference_list"), file);
}

QString Settings::rules() const { return store_.value(QStringLiteral("house_rules")).toString(); }

void Settings::setRules(const QString& chosen) { store_.setValue(QStringLiteral("house_rules"), chosen); }

}  // namespace wardchalk::ui
