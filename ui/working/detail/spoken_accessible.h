#pragma once

namespace wardchalk::ui::detail {

/// Makes every SpokenWidget readable to assistive technology as text. Does its work once.
void installSpokenAccessible();

}  // namespace wardchalk::ui::detail
