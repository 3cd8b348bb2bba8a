#pragma once

#include <QStringList>
#include <span>

class QTableView;
class QTableWidget;
class QWidget;

namespace wardchalk::ui {

/// Makes a table one to be read: whole rows are chosen, nothing is typed, cells wrap, Tab leaves it.
void readByRows(QTableView& table);

/// A table to be read by eye and by keyboard.
[[nodiscard]] QTableWidget* plainTable(const QStringList& columns, const QString& spokenName,
                                       QWidget* parent);

/// Adds a row of these texts.
void addRow(QTableWidget& table, const QStringList& texts);

/// Shares the width of a table among its columns, each by its part of the whole; the last takes what is left.
void shareWidth(QTableView& table, std::span<const double> parts);

}  // namespace wardchalk::ui
