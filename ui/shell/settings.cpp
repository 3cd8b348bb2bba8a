#include "ui/shell/settings.h"

#include <QStandardPaths>
#include <algorithm>
#include <array>

#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

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

int Settings::formWidth() const { return std::max(0, store_.value(QStringLiteral("form_width")).toInt()); }
void Settings::setFormWidth(int width) { store_.setValue(QStringLiteral("form_width"), width); }

/// Under the name that it has had since it was the size of the working alone.
int Settings::textSize() const {
  bool whole = false;
  const int percent = store_.value(QStringLiteral("zoom"), 100).toInt(&whole);
  return whole ? std::clamp(percent, leastTextSize, mostTextSize) : 100;
}

void Settings::setTextSize(int percent) { store_.setValue(QStringLiteral("zoom"), percent); }

Colours Settings::colours() const {
  return coloursNamed(store_.value(QStringLiteral("colours")).toString()).value_or(Colours::desktop);
}

void Settings::setColours(Colours colours) {
  store_.setValue(QStringLiteral("colours"), fromCore(nameOf(colours)));
}

std::optional<int> Settings::coverMinutes() const {
  bool whole = false;
  const int minutes = store_.value(QStringLiteral("cover_minutes")).toString().toInt(&whole);
  if (!whole || minutes < 1 || minutes > mostCoverMinutes) return std::nullopt;
  return minutes;
}

void Settings::setCoverMinutes(std::optional<int> minutes) {
  if (minutes)
    store_.setValue(QStringLiteral("cover_minutes"), *minutes);
  else
    store_.remove(QStringLiteral("cover_minutes"));
}

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
