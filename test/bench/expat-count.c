/* expat-count FILE: the yardstick in C. It reads XML with expat, with handlers for all that a reader of
   scores would listen to, and prints how much there was: elements, attributes, bytes of text. */
#include <expat.h>
#include <stdio.h>

enum { window = 256 * 1024 };

struct counts {
  long elements, attributes, text;
};

static void XMLCALL on_start(void *data, const XML_Char *name, const XML_Char **attributes) {
  struct counts *counts = data;
  (void)name;
  counts->elements++;
  for (; attributes[0]; attributes += 2) counts->attributes++;
}

static void XMLCALL on_end(void *data, const XML_Char *name) {
  (void)data;
  (void)name;
}

static void XMLCALL on_text(void *data, const XML_Char *text, int length) {
  (void)text;
  ((struct counts *)data)->text += length;
}

int main(int count, char **words) {
  struct counts counts = {0, 0, 0};
  FILE *file = count > 1 ? fopen(words[1], "rb") : NULL;
  XML_Parser parser = XML_ParserCreate(NULL);
  if (!file || !parser) return 2;
  XML_SetUserData(parser, &counts);
  XML_SetElementHandler(parser, on_start, on_end);
  XML_SetCharacterDataHandler(parser, on_text);
  for (int is_last = 0; !is_last;) {
    void *buffer = XML_GetBuffer(parser, window);
    if (!buffer) return 2;
    size_t length = fread(buffer, 1, window, file);
    is_last = length == 0;
    if (XML_ParseBuffer(parser, (int)length, is_last) == XML_STATUS_ERROR) return 1;
  }
  printf("%ld elements, %ld attributes, %ld bytes of text\n", counts.elements, counts.attributes, counts.text);
  XML_ParserFree(parser);
  fclose(file);
  return 0;
}
