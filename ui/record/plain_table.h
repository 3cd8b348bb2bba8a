#pragma once

#include <QStringList>

class QPushButton;
class QTableWidget;
class QWidget;

namespace wardchalk::ui {

/// A table to be read by eye and by keyboard: whole rows are chosen, nothing is typed, cells wrap, Tab leaves
/// it.
[[nodiscard]] QTableWidget* plainTable(const QStringList& columns, const QString& spokenName,
                                       QWidget* parent);

/// Adds a row of these texts.
void addRow(QTableWidget& table, const QStringList& texts);

/// A button that is high enough to be hit and is not pressed by an Enter elsewhere.
[[nodiscard]] QPushButton* plainButton(const QString& text, const char* name, QWidget* parent);

}  // namespace wardchalk::ui
