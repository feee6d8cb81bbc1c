// What a drag from the shelf onto a canvas is called.
#pragma once

namespace sillwright {

// MIME type of the drag; its data is the key of a shelf item, UTF-8.
inline constexpr const char* shelfMimeType = "application/x-sillwright-piece";

} // namespace sillwright
