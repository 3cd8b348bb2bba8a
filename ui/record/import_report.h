#pragma once

#include <QDialog>

#include "core/record/reference_list.h"

namespace wardchalk::ui {

/// What a table came to: how many entries are good, and every row that was refused with its column and why.
/// Nothing of it is kept before this has been seen.
class ImportReport : public QDialog {
  Q_OBJECT

 public:
  ImportReport(const ReferenceImport& import, const Date& today, QWidget* parent);
};

}  // namespace wardchalk::ui
