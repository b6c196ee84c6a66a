/* Asks the text door from C: JSON in, JSON out. The caller owns every buffer.
 *
 *   cc text.c -ltablerig */

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "tablerig_text.h"

/* The reply to a request, to be freed; NULL where there is no memory for it. */
static char *asked(const char *request)
{
    size_t room = 16 * 1024;
    for (;;) {
        size_t bytes = 0;
        char *reply = malloc(room);
        int32_t status;
        if (reply == NULL) {
            return NULL;
        }
        status = tablerig_text_answer(request, strlen(request), reply, room, &bytes);
        if (status == TABLERIG_TEXT_OK) {
            return reply;
        }
        free(reply);
        if (status != TABLERIG_TEXT_NO_ROOM) {
            return NULL;
        }
        room = bytes + 1;
    }
}

/* Length of the JSON string that begins with the quotation mark at `text`, both marks counted. */
static size_t string_length(const char *text)
{
    size_t end = 1;
    while (text[end] != '"' && text[end] != '\0') {
        end += text[end] == '\\' ? 2 : 1;
    }
    return end + 1;
}

/* 0 where every question about the built-in shoot, all of it invented, is answered. */
static int whole_shoot(void)
{
    /* Which lens, support and side; what would make a shot possible; does it fit; what to book; in which order. */
    static const char *const questions[] = {
        "{\"operation\": \"choose\", \"shoot\": %s, \"shot\": \"loaf\"}",
        "{\"operation\": \"smallest_changes\", \"shoot\": %s, \"shot\": \"breakfast-long\"}",
        "{\"operation\": \"fit\", \"shoot\": %s}",
        "{\"operation\": \"book\", \"shoot\": %s}",
        "{\"operation\": \"order\", \"shoot\": %s}",
    };
    /* The text of a shoot file, a JSON string as it stands, goes into the questions. */
    char *demo = asked("{\"operation\": \"demo\"}");
    const char *shoot = demo == NULL ? NULL : strstr(demo, "\"text\":\"");
    size_t i;
    int wrong = shoot == NULL;
    if (shoot != NULL) {
        shoot += strlen("\"text\":");
    }
    for (i = 0; i < sizeof questions / sizeof *questions && !wrong; i++) {
        size_t length = string_length(shoot);
        char *request = malloc(strlen(questions[i]) + length + 1);
        char *reply = NULL;
        if (request != NULL) {
            const char *gap = strstr(questions[i], "%s");
            sprintf(request, "%.*s%.*s%s", (int)(gap - questions[i]), questions[i], (int)length, shoot, gap + 2);
            reply = asked(request);
        }
        if (reply == NULL || strncmp(reply, "{\"ok\":", 6) != 0) {
            fprintf(stderr, "question %u: %.300s\n", (unsigned)i, reply == NULL ? "no reply" : reply);
            wrong = 1;
        }
        free(reply);
        free(request);
    }
    free(demo);
    return wrong;
}

int main(void)
{
    /* An 85 mm lens shows 60 cm from 1.5 m, on a sensor 36 mm wide: f = s / (W / w + 1). */
    char *focal = asked("{\"operation\": \"focal_length_for\", \"pupil_distance_mm\": \"1.5 m\","
                        " \"frame_width_mm\": \"60 cm\", \"used_width_mm\": 36}");
    /* A list longer than the first buffer. */
    char *fields = asked("{\"operation\": \"fields\"}");
    char *refused = asked("{\"operation\": \"third_stop\", \"f_number\": 0.1}");
    int wrong = whole_shoot();
    if (focal == NULL || strcmp(focal, "{\"ok\":{\"focal_length_mm\":84.90566037735849}}") != 0) {
        fprintf(stderr, "focal length: %s\n", focal == NULL ? "no reply" : focal);
        wrong = 1;
    }
    if (fields == NULL || strncmp(fields, "{\"ok\":{", 7) != 0 || strlen(fields) < 16 * 1024) {
        fprintf(stderr, "the list of fields did not arrive whole\n");
        wrong = 1;
    }
    if (refused == NULL || strstr(refused, "\"kind\":\"too_small\",\"number\":102,") == NULL
        || strstr(refused, "\"path\":[\"f_number\"]") == NULL) {
        fprintf(stderr, "refused: %s\n", refused == NULL ? "no reply" : refused);
        wrong = 1;
    }
    printf("%s\n", focal == NULL ? "" : focal);
    free(focal);
    free(fields);
    free(refused);
    return wrong;
}
